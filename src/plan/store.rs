//! Plans, prints and drafts on disk. Part of the shell: the only place that writes files.
//!
//! A file is first written whole under another name beside its place, brought to the disk, and
//! then renamed into place, so that whoever looks, and whatever fails, there is the old file or
//! the new one and never half of either.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{self, ErrorKind, Read, Write};
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use tempfile::{Builder, NamedTempFile};

use super::Id;

/// The largest plan file that is read, in bytes. A plan with every part it may have is far
/// smaller.
pub const LARGEST_PLAN: u64 = 4 * 1024 * 1024;

/// How the name begins and ends of a file that is being written.
const HALF: (&str, &str) = (".tallywatt-", ".part");

/// Why a file could not be read or written. The words are the message [`StoreError::key`], given
/// `path`, `reason` and `line`; see [`crate::words::problem::store`].
#[derive(Debug, thiserror::Error)]
#[error("{}: {}", self.path.display(), self.key())]
pub struct StoreError {
    /// The file or folder.
    pub path: PathBuf,
    /// Whether it was to be written.
    pub writing: bool,
    /// What is the matter with it.
    pub fault: Fault,
}

/// What is the matter with a file.
#[derive(Debug)]
pub enum Fault {
    /// The system refused.
    System(io::Error),
    /// It is a folder.
    Folder,
    /// There is something of that name, which was to be new.
    Exists,
    /// Its name cannot be that of a file here.
    Name,
    /// It is larger than [`LARGEST_PLAN`].
    TooLarge,
    /// It is no UTF-8 text from this line on.
    NotText {
        /// Counted from one.
        line: usize,
    },
    /// Another run of the program has this draft open.
    InUse,
}

impl StoreError {
    fn read(path: &Path, fault: Fault) -> Self {
        Self { path: path.to_owned(), writing: false, fault }
    }

    fn write(path: &Path, fault: Fault) -> Self {
        Self { path: path.to_owned(), writing: true, fault }
    }

    /// Its message key.
    #[must_use]
    pub fn key(&self) -> &'static str {
        match &self.fault {
            Fault::Folder => "store-is-a-folder",
            Fault::Exists => "store-exists",
            Fault::Name => "store-bad-name",
            Fault::TooLarge => "store-too-large",
            Fault::NotText { .. } => "store-not-text",
            Fault::InUse => "store-in-use",
            Fault::System(error) => match error.kind() {
                ErrorKind::NotFound if self.writing => "store-no-folder",
                ErrorKind::NotFound => "store-not-found",
                ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => "store-not-allowed",
                ErrorKind::StorageFull | ErrorKind::QuotaExceeded => "store-full",
                ErrorKind::IsADirectory => "store-is-a-folder",
                ErrorKind::NotADirectory => "store-not-a-folder",
                _ if self.writing => "store-cannot-write",
                _ => "store-cannot-read",
            },
        }
    }
}

/// The text of a plan file: bounded, UTF-8, without the byte order mark that some editors put
/// before it.
///
/// # Errors
/// When there is no such file, or it is no text or too large.
pub fn read_text(path: &Path) -> Result<String, StoreError> {
    let fail = |error| StoreError::read(path, Fault::System(error));
    let file = File::open(path).map_err(fail)?;
    if file.metadata().is_ok_and(|about| about.is_dir()) {
        return Err(StoreError::read(path, Fault::Folder));
    }
    read_from(file, path)
}

/// The same from any reader, such as the standard input; `path` is what errors call it.
///
/// # Errors
/// When it cannot be read, or is no text or too large.
pub fn read_from(reader: impl Read, path: &Path) -> Result<String, StoreError> {
    let mut bytes = Vec::new();
    reader
        .take(LARGEST_PLAN + 1)
        .read_to_end(&mut bytes)
        .map_err(|error| StoreError::read(path, Fault::System(error)))?;
    if bytes.len() as u64 > LARGEST_PLAN {
        return Err(StoreError::read(path, Fault::TooLarge));
    }
    let text = String::from_utf8(bytes).map_err(|error| {
        let good = &error.as_bytes()[..error.utf8_error().valid_up_to()];
        let line = good.split(|byte| *byte == b'\n').count();
        StoreError::read(path, Fault::NotText { line })
    })?;
    Ok(match text.strip_prefix('\u{feff}') {
        Some(rest) => rest.to_owned(),
        None => text,
    })
}

/// The text of every file below a folder whose name ends in `.` and `end`, by its path in the
/// folder, with `/` between its parts.
///
/// # Errors
/// When the folder or one of these files cannot be read.
pub fn read_folder(dir: &Path, end: &str) -> Result<BTreeMap<String, String>, StoreError> {
    // Deeper than anybody keeps templates, and than a link that leads back up can lead astray.
    const DEEPEST: usize = 4;
    let mut texts = BTreeMap::new();
    let mut folders = vec![(dir.to_owned(), String::new(), 0)];
    while let Some((folder, under, depth)) = folders.pop() {
        let fail = |error| StoreError::read(&folder, Fault::System(error));
        for entry in fs::read_dir(&folder).map_err(fail)? {
            let path = entry.map_err(fail)?.path();
            let Some(name) = path.file_name().and_then(|name| name.to_str()) else {
                continue;
            };
            let inside = format!("{under}{name}");
            if path.is_dir() {
                if depth < DEEPEST {
                    folders.push((path, inside + "/", depth + 1));
                }
            } else if path.extension().is_some_and(|found| found == end) {
                texts.insert(inside, read_text(&path)?);
            }
        }
    }
    Ok(texts)
}

/// Writes a file whole or not at all. A file that was there keeps its permissions; a link stays
/// a link and what it points to is replaced.
///
/// # Errors
/// When the file cannot be written; what was there is then unchanged.
pub fn write_atomic(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let path = &real(path);
    let waiting = prepare(path, bytes)?;
    settle(waiting, path)?;
    sync_folder(folder_of(path));
    Ok(())
}

/// Writes a file that is not there yet, whole or not at all. Whatever comes to stand there
/// meanwhile, a link too, is left as it is.
///
/// # Errors
/// When there is something of that name, or the file cannot be written.
pub fn write_new(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let waiting = prepare_new(path, bytes)?;
    settle_new(waiting, path)?;
    sync_folder(folder_of(path));
    Ok(())
}

/// Writes a set of new files into a folder, which is made if it is not there: all of them, or none
/// if one of them is there already.
///
/// # Errors
/// When one of them is there, or cannot be written, with its path.
pub fn write_new_set<N: AsRef<str>, B: AsRef<[u8]>>(
    dir: &Path,
    files: impl IntoIterator<Item = (N, B)>,
) -> Result<(), StoreError> {
    fs::create_dir_all(dir).map_err(|error| StoreError::write(dir, Fault::System(error)))?;
    let mut waiting = Vec::new();
    for (name, bytes) in files {
        let path = file_in(dir, name.as_ref())?;
        waiting.push((prepare_new(&path, bytes.as_ref())?, path));
    }
    let mut written = Vec::new();
    for (file, path) in waiting {
        if let Err(error) = settle_new(file, &path) {
            // They are ours, of this moment.
            for path in written {
                let _ = fs::remove_file(path);
            }
            return Err(error);
        }
        written.push(path);
    }
    sync_folder(dir);
    Ok(())
}

/// More than any print takes.
const MOST_OF_A_PRINT: u64 = 64 << 20;

/// Writes a set of files into a folder, which is made if it is not there. Every one is written
/// under another name first, so that a full disk leaves the old set whole. Then takes out what an earlier set had and
/// this one has not, of these names and if it is `ours`; gives the names of what is gone.
///
/// # Errors
/// When one of them cannot be written or taken out, with its path.
pub fn write_set<N: AsRef<str>, B: AsRef<[u8]>>(
    dir: &Path,
    files: impl IntoIterator<Item = (N, B)>,
    needless: &[String],
    ours: impl Fn(&[u8]) -> bool,
) -> Result<Vec<String>, StoreError> {
    fs::create_dir_all(dir).map_err(|error| StoreError::write(dir, Fault::System(error)))?;
    let mut waiting = Vec::new();
    for (name, bytes) in files {
        let path = real(&file_in(dir, name.as_ref())?);
        waiting.push((prepare(&path, bytes.as_ref())?, path));
    }
    for (file, path) in waiting {
        settle(file, &path)?;
    }
    let mut gone = Vec::new();
    for name in needless {
        let path = file_in(dir, name)?;
        // A link is somebody's own.
        if !fs::symlink_metadata(&path).is_ok_and(|about| about.is_file()) {
            continue;
        }
        let mut bytes = Vec::new();
        let file = File::open(&path).map(|file| file.take(MOST_OF_A_PRINT));
        let read = file.and_then(|mut file| file.read_to_end(&mut bytes));
        if read.is_ok() && ours(&bytes) {
            fs::remove_file(&path).map_err(|error| StoreError::write(&path, Fault::System(error)))?;
            gone.push(name.clone());
        }
    }
    sync_folder(dir);
    Ok(gone)
}

/// The path of a file right in a folder.
fn file_in(dir: &Path, name: &str) -> Result<PathBuf, StoreError> {
    let path = dir.join(name);
    let parts = Path::new(name).components().count();
    if parts == 1 && path.file_name() == Some(name.as_ref()) {
        Ok(path)
    } else {
        Err(StoreError::write(&path, Fault::Name))
    }
}

/// Where a write to this path ends up, links followed.
fn real(path: &Path) -> PathBuf {
    match fs::symlink_metadata(path) {
        Ok(about) if about.is_symlink() => fs::canonicalize(path).unwrap_or_else(|_| path.to_owned()),
        _ => path.to_owned(),
    }
}

fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

/// The bytes in a file of another name beside the path, on the disk.
fn prepare(path: &Path, bytes: &[u8]) -> Result<NamedTempFile, StoreError> {
    let fail = |error| StoreError::write(path, Fault::System(error));
    let before = fs::metadata(path).ok();
    if before.as_ref().is_some_and(fs::Metadata::is_dir) {
        return Err(StoreError::write(path, Fault::Folder));
    }
    if path.file_name().is_none() {
        return Err(StoreError::write(path, Fault::Name));
    }
    if before.as_ref().is_some_and(|about| about.permissions().readonly()) {
        // Renaming over it would succeed, but its owner has said that it is not to be changed.
        return Err(fail(ErrorKind::PermissionDenied.into()));
    }
    let mut builder = Builder::new();
    builder.prefix(HALF.0).suffix(HALF.1);
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // As any new file: the user's mask takes away from it.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    let mut file = builder.tempfile_in(folder_of(path)).map_err(fail)?;
    file.write_all(bytes).map_err(fail)?;
    if let Some(before) = before {
        file.as_file().set_permissions(before.permissions()).map_err(fail)?;
    }
    file.as_file().sync_all().map_err(fail)?;
    Ok(file)
}

fn settle(file: NamedTempFile, path: &Path) -> Result<(), StoreError> {
    file.persist(path).map(drop).map_err(|failed| StoreError::write(path, Fault::System(failed.error)))
}

/// As [`prepare`], for a path where nothing stands: seen before anything is written, so that the
/// usual case needs no room on the disk to be refused.
fn prepare_new(path: &Path, bytes: &[u8]) -> Result<NamedTempFile, StoreError> {
    if path.symlink_metadata().is_ok() {
        return Err(StoreError::write(path, Fault::Exists));
    }
    prepare(path, bytes)
}

#[allow(clippy::disallowed_methods)] // takes a name; what is written goes over it as a whole
fn settle_new(file: NamedTempFile, path: &Path) -> Result<(), StoreError> {
    let exists = |error: &io::Error| error.kind() == ErrorKind::AlreadyExists;
    let failed = match file.persist_noclobber(path) {
        Ok(_) => return Ok(()),
        Err(failed) if exists(&failed.error) => {
            return Err(StoreError::write(path, Fault::Exists));
        }
        Err(failed) => failed,
    };
    // Some file systems can neither rename to a free name only nor have two names for a file, as
    // those of memory cards. There the name is taken first, which any can do for one alone.
    match File::create_new(path) {
        Ok(_) => settle(failed.file, path).inspect_err(|_| {
            let _ = fs::remove_file(path);
        }),
        Err(error) if exists(&error) => Err(StoreError::write(path, Fault::Exists)),
        Err(error) => Err(StoreError::write(path, Fault::System(error))),
    }
}

/// Brings the renaming itself to the disk. Not every system can, and the file is whole either
/// way, so a refusal is no error.
fn sync_folder(folder: &Path) {
    #[cfg(unix)]
    if let Ok(folder) = File::open(folder) {
        let _ = folder.sync_all();
    }
    #[cfg(not(unix))]
    let _ = folder;
}

/// Removes what a run that was killed left half written. A run that is alive writes for a moment,
/// so what is an hour old is nobody's.
#[allow(clippy::disallowed_methods)] // the age of a file on disk, which no plan depends on
fn sweep(entry: &fs::DirEntry) {
    let name = entry.file_name();
    let half = name.to_str().is_some_and(|name| name.starts_with(HALF.0) && name.ends_with(HALF.1));
    let age = || entry.metadata().ok()?.modified().ok()?.elapsed().ok();
    if half && age().is_some_and(|age| age.as_secs() > 3600) {
        // If it cannot be removed, it does no harm.
        let _ = fs::remove_file(entry.path());
    }
}

/// The folder of unfinished interviews.
#[derive(Clone, Debug)]
pub struct Drafts {
    folder: PathBuf,
}

/// A draft in the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DraftEntry {
    /// Its name.
    pub name: Id,
    /// When it was last saved, if the system tells.
    pub saved: Option<SystemTime>,
}

/// A draft that this run of the program has to itself. Another run that opens it is refused until
/// this is dropped, or the process ends in whatever way: the lock is the system's.
#[derive(Debug)]
pub struct Draft {
    name: Id,
    path: PathBuf,
    /// Held for its lock.
    _lock: File,
}

impl Drafts {
    /// Drafts under this folder for application data.
    #[must_use]
    pub fn at(data: &Path) -> Self {
        Self { folder: data.join("drafts") }
    }

    /// Drafts where the platform keeps application data. `None` if it has no such place, as for a
    /// user without a home.
    #[must_use]
    pub fn usual() -> Option<Self> {
        directories::ProjectDirs::from("", "", "tallywatt").map(|dirs| Self::at(dirs.data_dir()))
    }

    /// The folder.
    #[must_use]
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// All drafts, the last saved first.
    ///
    /// # Errors
    /// When the folder is there and cannot be read.
    pub fn list(&self) -> Result<Vec<DraftEntry>, StoreError> {
        let fail = |error| StoreError::read(&self.folder, Fault::System(error));
        let entries = match fs::read_dir(&self.folder) {
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
            other => other.map_err(fail)?,
        };
        let mut drafts = Vec::new();
        for entry in entries {
            let entry = entry.map_err(fail)?;
            let name = entry.file_name();
            sweep(&entry);
            let name = name.to_str().and_then(|name| name.strip_suffix(".toml"));
            if let Some(name) = name.and_then(Id::new) {
                let saved = entry.metadata().and_then(|about| about.modified()).ok();
                drafts.push(DraftEntry { name, saved });
            }
        }
        drafts.sort_by(|a, b| b.saved.cmp(&a.saved).then_with(|| a.name.cmp(&b.name)));
        Ok(drafts)
    }

    /// Begins a draft for this run alone, under a name that no draft has: the stem itself, or
    /// with a number after it.
    ///
    /// # Errors
    /// When the folder cannot be made.
    pub fn begin(&self, stem: &Id) -> Result<Draft, StoreError> {
        let head: String = stem.as_str().chars().take(Id::LONGEST - 8).collect();
        let numbered = (2_usize..).filter_map(|number| Id::new(&format!("{head}-{number}")));
        for name in std::iter::once(stem.clone()).chain(numbered) {
            match self.open(&name) {
                // Another run may begin at the same moment and be first to a name.
                Err(StoreError { fault: Fault::InUse, .. }) => {}
                Ok(draft) if draft.path.exists() => {}
                other => return other,
            }
        }
        self.open(stem)
    }

    /// Opens a draft, new or old, for this run alone.
    ///
    /// # Errors
    /// When another run has it open, or the folder cannot be made.
    #[allow(clippy::disallowed_methods)] // a lock is empty
    pub fn open(&self, name: &Id) -> Result<Draft, StoreError> {
        let path = self.folder.join(format!("{name}.toml"));
        let fail = |error| StoreError::write(&path, Fault::System(error));
        fs::create_dir_all(&self.folder).map_err(fail)?;
        let lock = File::options()
            .create(true)
            .truncate(false)
            .write(true)
            .open(self.folder.join(format!(".{name}.lock")))
            .map_err(fail)?;
        match lock.try_lock() {
            // A file system without locks, as some shared ones: better no lock than no draft.
            Ok(()) | Err(fs::TryLockError::Error(_)) => {}
            Err(fs::TryLockError::WouldBlock) => {
                return Err(StoreError::write(&path, Fault::InUse));
            }
        }
        Ok(Draft { name: name.clone(), path, _lock: lock })
    }
}

impl Draft {
    /// Its name.
    #[must_use]
    pub const fn name(&self) -> &Id {
        &self.name
    }

    /// Its file.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Its text; `None` if it was never saved.
    ///
    /// # Errors
    /// When there is a file that cannot be read.
    pub fn load(&self) -> Result<Option<String>, StoreError> {
        match read_text(&self.path) {
            Err(StoreError { fault: Fault::System(error), .. }) if error.kind() == ErrorKind::NotFound => Ok(None),
            other => other.map(Some),
        }
    }

    /// Saves it.
    ///
    /// # Errors
    /// When it cannot be written; what was saved before is then unchanged.
    pub fn save(&self, text: &str) -> Result<(), StoreError> {
        write_atomic(&self.path, text.as_bytes())
    }

    /// Removes it for good.
    ///
    /// # Errors
    /// When it is there and cannot be removed.
    pub fn remove(self) -> Result<(), StoreError> {
        match fs::remove_file(&self.path) {
            Err(error) if error.kind() != ErrorKind::NotFound => {
                Err(StoreError::write(&self.path, Fault::System(error)))
            }
            _ => Ok(()),
        }
    }
}

#[cfg(test)]
#[allow(clippy::disallowed_methods)] // tests read plain files
mod tests {
    use super::*;

    fn folder() -> tempfile::TempDir {
        tempfile::tempdir().unwrap()
    }

    /// The names in a folder, hidden ones too.
    fn names(folder: &Path) -> Vec<String> {
        let mut names: Vec<String> =
            fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
        names.sort();
        names
    }

    #[test]
    fn replaces_whole_and_leaves_nothing_behind() {
        let dir = folder();
        let path = dir.path().join("plan.toml");
        write_atomic(&path, b"first").unwrap();
        write_atomic(&path, b"second").unwrap();
        assert_eq!(fs::read(&path).unwrap(), b"second");
        assert_eq!(names(dir.path()), ["plan.toml"]);
    }

    #[cfg(unix)]
    #[test]
    fn permissions_and_links_stay() {
        use std::os::unix::fs::PermissionsExt;
        let dir = folder();
        let (path, link) = (dir.path().join("plan.toml"), dir.path().join("link.toml"));
        write_atomic(&path, b"first").unwrap();
        fs::set_permissions(&path, fs::Permissions::from_mode(0o640)).unwrap();
        std::os::unix::fs::symlink(&path, &link).unwrap();
        write_atomic(&link, b"second").unwrap();
        assert_eq!(fs::read(&path).unwrap(), b"second");
        assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
        let mode = fs::metadata(&path).unwrap().permissions().mode();
        assert_eq!(mode & 0o777, 0o640);
    }

    #[test]
    fn what_cannot_be_written_is_named_and_unharmed() {
        let dir = folder();
        let inside = dir.path().join("nowhere").join("plan.toml");
        let error = write_atomic(&inside, b"x").unwrap_err();
        assert_eq!((error.key(), &error.path), ("store-no-folder", &inside));
        let error = write_atomic(dir.path(), b"x").unwrap_err();
        assert_eq!(error.key(), "store-is-a-folder");

        let fixed = dir.path().join("fixed.toml");
        write_atomic(&fixed, b"kept").unwrap();
        let mut permissions = fs::metadata(&fixed).unwrap().permissions();
        permissions.set_readonly(true);
        fs::set_permissions(&fixed, permissions).unwrap();
        let error = write_atomic(&fixed, b"lost").unwrap_err();
        assert_eq!(error.key(), "store-not-allowed");
        assert_eq!(fs::read(&fixed).unwrap(), b"kept");
        assert_eq!(names(dir.path()), ["fixed.toml"]);
    }

    #[test]
    fn a_set_is_written_after_all_of_it_could_be() {
        let dir = folder();
        let into = dir.path().join("prints").join("sunday");
        let set = |a, b| write_set(&into, [("a.pdf", a), ("b.pdf", b)], &[], |_| true);
        set(b"one", b"two").unwrap();
        assert_eq!(names(&into), ["a.pdf", "b.pdf"]);
        // The second cannot be written, so the first is not replaced.
        fs::remove_file(into.join("b.pdf")).unwrap();
        fs::create_dir(into.join("b.pdf")).unwrap();
        let error = set(b"new", b"new").unwrap_err();
        assert_eq!(error.path, into.join("b.pdf"));
        assert_eq!(fs::read(into.join("a.pdf")).unwrap(), b"one");
        assert_eq!(names(&into), ["a.pdf", "b.pdf"]);
        for name in ["../x", "a/b", "", ".."] {
            let error = write_set(&into, [(name, b"x")], &[], |_| true).unwrap_err();
            assert_eq!(error.key(), "store-bad-name", "{name}");
        }
    }

    /// What an earlier set left goes; what somebody else wrote under that name stays, and so does a link.
    #[test]
    fn a_set_takes_out_what_it_has_no_more() {
        let dir = folder();
        let names_of = |all: &[&str]| -> Vec<String> { all.iter().map(|it| (*it).to_owned()).collect() };
        for name in ["look.pdf", "look-fr.pdf", "mine.pdf"] {
            write_atomic(&dir.path().join(name), if name == "look-fr.pdf" { b"theirs" } else { b"ours" }).unwrap();
        }
        let needless = names_of(&["look.pdf", "look-fr.pdf", "never.pdf"]);
        let gone = write_set(dir.path(), [("card.pdf", b"x")], &needless, |it| it == b"ours").unwrap();
        assert_eq!(gone, ["look.pdf"]);
        assert_eq!(names(dir.path()), ["card.pdf", "look-fr.pdf", "mine.pdf"]);
    }

    #[test]
    fn what_is_there_is_never_written_over() {
        let dir = folder();
        let path = dir.path().join("plan.toml");
        write_new(&path, b"first").unwrap();
        let error = write_new(&path, b"second").unwrap_err();
        assert_eq!((error.key(), &error.path), ("store-exists", &path));
        assert_eq!(fs::read(&path).unwrap(), b"first");
        assert_eq!(names(dir.path()), ["plan.toml"]);
        // Of a set, none is written, nor left half written.
        let error = write_new_set(dir.path(), [("a", b"x"), ("plan.toml", b"x")]).unwrap_err();
        assert_eq!(error.key(), "store-exists");
        assert_eq!(names(dir.path()), ["plan.toml"]);
        let into = dir.path().join("new");
        write_new_set(&into, [("a", b"x"), ("b", b"y")]).unwrap();
        assert_eq!(names(&into), ["a", "b"]);
    }

    /// What comes there between looking and writing stays too.
    #[test]
    fn what_came_meanwhile_is_never_written_over() {
        let dir = folder();
        let path = dir.path().join("plan.toml");
        let waiting = prepare_new(&path, b"ours").unwrap();
        write_atomic(&path, b"theirs").unwrap();
        assert_eq!(settle_new(waiting, &path).unwrap_err().key(), "store-exists");
        assert_eq!(fs::read(&path).unwrap(), b"theirs");
        assert_eq!(names(dir.path()), ["plan.toml"]);
    }

    #[cfg(unix)]
    #[test]
    fn a_link_to_nowhere_is_something_that_is_there() {
        let dir = folder();
        let link = dir.path().join("link.toml");
        std::os::unix::fs::symlink(dir.path().join("nowhere"), &link).unwrap();
        assert_eq!(write_new(&link, b"x").unwrap_err().key(), "store-exists");
        assert_eq!(names(dir.path()), ["link.toml"]);
    }

    #[test]
    fn text_is_bounded_and_is_text() {
        let dir = folder();
        let path = dir.path().join("plan.toml");
        write_atomic(&path, "\u{feff}format = 1\n".as_bytes()).unwrap();
        assert_eq!(read_text(&path).unwrap(), "format = 1\n");
        write_atomic(&path, b"format = 1\nname = \"\xff\"\n").unwrap();
        let error = read_text(&path).unwrap_err();
        assert!(matches!(error.fault, Fault::NotText { line: 2 }), "{error:?}");
        assert_eq!(read_text(&dir.path().join("none")).unwrap_err().key(), "store-not-found");
        assert_eq!(read_text(dir.path()).unwrap_err().key(), "store-is-a-folder");
        let endless = read_from(io::repeat(b'#'), Path::new("-")).unwrap_err();
        assert_eq!(endless.key(), "store-too-large");
    }

    #[test]
    fn drafts_come_and_go() {
        let dir = folder();
        let drafts = Drafts::at(dir.path());
        assert_eq!(drafts.list().unwrap(), []);
        let name = Id::new("camp").unwrap();
        let draft = drafts.begin(&name).unwrap();
        assert_eq!(draft.load().unwrap(), None);
        // Not on the disk yet, it has its name already.
        assert_eq!(drafts.begin(&name).unwrap().name().as_str(), "camp-2");
        draft.save("format = 1\n").unwrap();
        assert_eq!(draft.load().unwrap().as_deref(), Some("format = 1\n"));
        assert_eq!(drafts.begin(&name).unwrap().name().as_str(), "camp-2");

        // Another run is refused while this one has it, and has it afterwards.
        assert_eq!(drafts.open(&name).unwrap_err().key(), "store-in-use");
        drop(draft);
        let draft = drafts.open(&name).unwrap();
        let listed: Vec<Id> = drafts.list().unwrap().into_iter().map(|d| d.name).collect();
        assert_eq!(listed, [name]);
        draft.remove().unwrap();
        assert_eq!(drafts.list().unwrap(), []);
    }

    #[test]
    fn a_long_stem_still_finds_a_free_name() {
        let dir = folder();
        let drafts = Drafts::at(dir.path());
        let stem = Id::new(&"x".repeat(Id::LONGEST)).unwrap();
        drafts.open(&stem).unwrap().save("").unwrap();
        assert_ne!(*drafts.begin(&stem).unwrap().name(), stem);
    }

    #[test]
    fn what_a_killed_run_left_is_swept_up_after_an_hour() {
        let dir = folder();
        let drafts = Drafts::at(dir.path());
        let name = Id::new("camp").unwrap();
        drafts.begin(&name).unwrap().save("x").unwrap();
        let (old, new) = (".tallywatt-1.part", ".tallywatt-2.part");
        for half in [old, new] {
            let file = File::create(drafts.folder().join(half)).unwrap();
            let passed = std::time::Duration::from_secs(if half == old { 4000 } else { 0 });
            let made = file.metadata().unwrap().modified().unwrap();
            file.set_modified(made - passed).unwrap();
        }
        assert_eq!(drafts.list().unwrap().len(), 1);
        assert!(!drafts.folder().join(old).exists());
        assert!(drafts.folder().join(new).exists());
    }
}
