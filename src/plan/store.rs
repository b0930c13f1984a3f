//! Plans, prints and drafts on disk. Part of the shell: the only place that writes files.
//!
//! A file is first written whole under another name beside its place, brought to the disk, and
//! then renamed into place, so that whoever looks, and whatever fails, there is the old file or
//! the new one and never half of either.
//!
//! Nothing of the user's is lost: a file is written where nothing stands ([`write_new`]), over what
//! was read from it ([`rewrite`]), or into a folder of prints over what this program wrote there
//! itself, as it is now ([`write_set`]). Nobody else can write over a file.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::fs::{self, File};
use std::io::{self, ErrorKind, Read, Write};
use std::path::{Path, PathBuf};
use std::thread;
use std::time::{Duration, SystemTime};

use tempfile::{Builder, NamedTempFile, TempPath};

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
    /// It is not what this program wrote there.
    NotOurs,
    /// It is not what was read from it any more.
    Changed,
    /// It is a pipe, and nobody writes to it.
    Silent,
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
    /// It could not be read.
    #[must_use]
    pub fn read(path: &Path, fault: Fault) -> Self {
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
            Fault::NotOurs => "store-not-ours",
            Fault::Changed => "store-changed",
            Fault::Silent => "store-silent",
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
                // Where a folder is to be made.
                ErrorKind::AlreadyExists if self.writing => "store-not-a-folder",
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
    let file = open(path)?;
    if file.metadata().is_ok_and(|about| about.is_dir()) {
        return Err(StoreError::read(path, Fault::Folder));
    }
    read_from(file, path)
}

/// How long somebody may take to begin to write to a pipe with a name.
#[cfg(unix)]
const BEGINS: Duration = Duration::from_secs(5);

/// The file, to be read. A pipe with a name opens once somebody writes to it, which may be never.
///
/// # Errors
/// When it is not there, or cannot be read.
pub fn open(path: &Path) -> Result<File, StoreError> {
    let fail = |error| StoreError::read(path, Fault::System(error));
    #[cfg(unix)]
    if fs::metadata(path).is_ok_and(|about| std::os::unix::fs::FileTypeExt::is_fifo(&about.file_type())) {
        let (send, opened) = std::sync::mpsc::channel();
        let pipe = path.to_owned();
        // It waits on where nobody comes; the program does not.
        thread::spawn(move || send.send(File::open(pipe)));
        let opened = opened.recv_timeout(BEGINS).map_err(|_| StoreError::read(path, Fault::Silent))?;
        return opened.map_err(fail);
    }
    File::open(path).map_err(fail)
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
/// a link and what it points to is replaced. For files that are nobody else's.
///
/// # Errors
/// When the file cannot be written; what was there is then unchanged.
pub(crate) fn write_atomic(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let path = &real(path);
    let _held = hold(folder_of(path));
    let waiting = prepare(path, bytes)?;
    settle(waiting, path)?;
    sync_folder(folder_of(path));
    Ok(())
}

/// The same, of a text file that holds what was read from it, or is gone.
///
/// # Errors
/// When it holds something else by now, or cannot be written.
pub fn rewrite(path: &Path, read: &str, now: &str) -> Result<(), StoreError> {
    let stands = match read_text(path) {
        Err(StoreError { fault: Fault::System(error), .. }) if error.kind() == ErrorKind::NotFound => true,
        stands => stands? == read,
    };
    if !stands {
        return Err(StoreError::write(path, Fault::Changed));
    }
    write_atomic(path, now.as_bytes())
}

/// Whether nothing stands there, a link neither.
///
/// # Errors
/// When something does, or nobody can tell.
pub fn is_free(path: &Path) -> Result<(), StoreError> {
    match path.symlink_metadata() {
        Ok(_) => Err(StoreError::write(path, Fault::Exists)),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(()),
        Err(error) => Err(StoreError::write(path, Fault::System(error))),
    }
}

/// Writes a file that is not there yet, whole or not at all. Whatever comes to stand there
/// meanwhile, a link too, is left as it is.
///
/// # Errors
/// When there is something of that name, or the file cannot be written.
pub fn write_new(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let _held = hold(folder_of(path));
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
    let _held = hold(dir);
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

/// What a folder of prints is to hold.
#[derive(Clone, Copy, Debug)]
pub struct Set<'a> {
    /// The files, by their names.
    pub files: &'a [(String, Vec<u8>)],
    /// Those of them that are written over nothing: they may hold somebody's work even if this program wrote them.
    pub new: &'a [&'a str],
    /// What an earlier set may have left, and this one has no need of.
    pub needless: &'a [String],
}

/// Writes a set of files into a folder, which is made if it is not there. Every one is written under another name
/// first, so that a full disk leaves the old set whole; then those of the old set that it replaces are taken away,
/// and then the new ones get their names. Whoever stops it at any moment finds no two of different sets. Gives the
/// names of what was needless and is gone.
///
/// # Errors
/// When one of them stands there and is not what this program wrote, or cannot be written or taken away; with its
/// path. The old set is then whole.
pub fn write_set(dir: &Path, set: Set<'_>) -> Result<Vec<String>, StoreError> {
    write_set_seen(dir, set, &mut || ())
}

/// As [`write_set`], seen after every step that changes a name.
fn write_set_seen(dir: &Path, set: Set<'_>, seen: &mut dyn FnMut()) -> Result<Vec<String>, StoreError> {
    fs::create_dir_all(dir).map_err(|error| StoreError::write(dir, Fault::System(error)))?;
    let _held = hold(dir);
    let list = dir.join(LIST);
    let before = Written::read(&list)?;
    let mut after = before.clone();
    let (mut waiting, mut old) = (Vec::new(), Vec::new());
    for (name, bytes) in set.files {
        let path = file_in(dir, name)?;
        let new = set.new.contains(&name.as_str());
        match stands(&path)? {
            // Word for word what it is to be: it may be somebody's own, and stays at every moment.
            Some(found) if found == *bytes => continue,
            Some(_) if new => return Err(StoreError::write(&path, Fault::Exists)),
            Some(found) if before.has(name, &found) => old.push(path.clone()),
            Some(_) => return Err(StoreError::write(&path, Fault::NotOurs)),
            None => {}
        }
        // What may hold somebody's work is never this program's to replace.
        if !new {
            after.put(name, bytes);
        }
        waiting.push((prepare(&path, bytes)?, path));
    }
    let mut gone = Vec::new();
    for name in set.needless {
        let path = file_in(dir, name)?;
        if let Ok(Some(found)) = stands(&path)
            && before.has(name, &found)
        {
            after.0.retain(|(_, it)| it != name);
            old.push(path);
            gone.push(name.clone());
        }
    }
    // Until all of it is done, what stands there is of either.
    before.with(&after).write(&list)?;
    swap(waiting, old, seen)?;
    after.write(&list)?;
    sync_folder(dir);
    Ok(gone)
}

/// Takes the old ones away and puts the new ones there; or else leaves the old ones as they were.
fn swap(new: Vec<(NamedTempFile, PathBuf)>, old: Vec<PathBuf>, seen: &mut dyn FnMut()) -> Result<(), StoreError> {
    let mut away: Vec<(TempPath, PathBuf)> = Vec::new();
    let mut there: Vec<PathBuf> = Vec::new();
    let all = || -> Result<(), StoreError> {
        for path in old {
            let fail = |error| StoreError::write(&path, Fault::System(error));
            let beside = half().tempfile_in(folder_of(&path)).map_err(fail)?.into_temp_path();
            fs::rename(&path, &beside).map_err(fail)?;
            away.push((beside, path));
            seen();
        }
        for (file, path) in new {
            settle(file, &path)?;
            there.push(path);
            seen();
        }
        Ok(())
    };
    let done = all();
    if done.is_err() {
        for path in there {
            let _ = fs::remove_file(path);
        }
        for (beside, path) in away {
            let _ = beside.persist(path);
        }
    }
    done
}

/// The bytes of a file that is no link; nothing where none is.
fn stands(path: &Path) -> Result<Option<Vec<u8>>, StoreError> {
    /// More than any print takes.
    const MOST: u64 = 64 << 20;
    let fail = |error| StoreError::write(path, Fault::System(error));
    match fs::symlink_metadata(path) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
        Err(error) => return Err(fail(error)),
        Ok(about) if about.is_dir() => return Err(StoreError::write(path, Fault::Folder)),
        // A link is somebody's own, and leads out of the folder.
        Ok(about) if !about.is_file() || about.len() > MOST => return Err(StoreError::write(path, Fault::NotOurs)),
        Ok(_) => {}
    }
    let mut bytes = Vec::new();
    let read = File::open(path).and_then(|file| file.take(MOST).read_to_end(&mut bytes));
    read.map(|_| Some(bytes)).map_err(fail)
}

/// The list of what this program wrote into a folder of prints, in that folder.
const LIST: &str = ".tallywatt";

/// Its first line.
const HEAD: &str =
    "# What tallywatt wrote here: it writes over nothing else, and over nothing that was changed since.\n";

/// What this program wrote into a folder: sums of the bytes of files, with their names.
#[derive(Clone, Default)]
struct Written(BTreeSet<(String, String)>);

impl Written {
    fn read(list: &Path) -> Result<Self, StoreError> {
        let Some(bytes) = stands(list)? else {
            return Ok(Self::default());
        };
        let text = String::from_utf8(bytes).ok();
        let rows = text.as_deref().and_then(|text| text.strip_prefix(HEAD));
        let rows = rows.ok_or_else(|| StoreError::write(list, Fault::NotOurs))?;
        let row = |row: &str| row.split_once("  ").map(|(sum, name)| (sum.to_owned(), name.to_owned()));
        Ok(Self(rows.lines().filter_map(row).collect()))
    }

    fn write(&self, list: &Path) -> Result<(), StoreError> {
        let mut text = HEAD.to_owned();
        for (sum, name) in &self.0 {
            let _ = writeln!(text, "{sum}  {name}");
        }
        settle(prepare(list, text.as_bytes())?, list)
    }

    fn has(&self, name: &str, bytes: &[u8]) -> bool {
        self.0.contains(&(sum(bytes), name.to_owned()))
    }

    /// This is what stands under that name.
    fn put(&mut self, name: &str, bytes: &[u8]) {
        self.0.retain(|(_, it)| it != name);
        self.0.insert((sum(bytes), name.to_owned()));
    }

    fn with(&self, other: &Self) -> Self {
        Self(self.0.union(&other.0).cloned().collect())
    }
}

/// Tells bytes from any that somebody made of them, and is the same in every build: Fowler, Noll and Vo, FNV-1a,
/// 64 bits, and how many there are.
fn sum(bytes: &[u8]) -> String {
    let step = |hash: u64, byte: &u8| (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3);
    format!("{:016x}-{}", bytes.iter().fold(0xcbf2_9ce4_8422_2325, step), bytes.len())
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
    let mut file = half().tempfile_in(folder_of(path)).map_err(fail)?;
    file.write_all(bytes).map_err(fail)?;
    if let Some(before) = before {
        file.as_file().set_permissions(before.permissions()).map_err(fail)?;
    }
    file.as_file().sync_all().map_err(fail)?;
    Ok(file)
}

/// A file of another name.
fn half() -> Builder<'static, 'static> {
    let mut builder = Builder::new();
    builder.prefix(HALF.0).suffix(HALF.1);
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // As any new file: the user's mask takes away from it.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    builder
}

fn settle(file: NamedTempFile, path: &Path) -> Result<(), StoreError> {
    file.persist(path).map(drop).map_err(|failed| StoreError::write(path, Fault::System(failed.error)))
}

/// As [`prepare`], for a path where nothing stands: seen before anything is written, so that the
/// usual case needs no room on the disk to be refused.
fn prepare_new(path: &Path, bytes: &[u8]) -> Result<NamedTempFile, StoreError> {
    is_free(path)?;
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

/// Has a folder to itself until it is dropped, or the process ends in whatever way, and sweeps up what runs that were
/// killed left half written. Another run writes for a moment, which is waited for. Without a lock, as on some shared
/// file systems, it is written all the same, and what is an hour old is nobody's.
#[allow(clippy::disallowed_methods)] // the age of a file on disk, which no plan depends on
fn hold(folder: &Path) -> Option<File> {
    let held = lock(folder);
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let halves = entries.filter(|entry| {
        let name = entry.file_name();
        name.to_str().is_some_and(|name| name.starts_with(HALF.0) && name.ends_with(HALF.1))
    });
    for half in halves {
        let age = || half.metadata().ok()?.modified().ok()?.elapsed().ok();
        if held.is_some() || age().is_some_and(|age| age.as_secs() > 3600) {
            // If it cannot be removed, it does no harm.
            let _ = fs::remove_file(half.path());
        }
    }
    held
}

/// The folder, locked for this process, where the system can do that.
fn lock(folder: &Path) -> Option<File> {
    let folder = File::open(folder).ok()?;
    for _ in 0..100 {
        match folder.try_lock() {
            Ok(()) => return Some(folder),
            Err(fs::TryLockError::Error(_)) => return None,
            Err(fs::TryLockError::WouldBlock) => thread::sleep(Duration::from_millis(10)),
        }
    }
    None
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
        drop(hold(&self.folder));
        let entries = match fs::read_dir(&self.folder) {
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
            other => other.map_err(fail)?,
        };
        let mut drafts = Vec::new();
        for entry in entries {
            let entry = entry.map_err(fail)?;
            let name = entry.file_name();
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

    /// Files of a set, each of so many letters.
    fn files(all: &[(&str, &str)]) -> Vec<(String, Vec<u8>)> {
        all.iter().map(|(name, text)| ((*name).to_owned(), text.as_bytes().to_vec())).collect()
    }

    fn put(dir: &Path, all: &[(&str, &str)]) -> Result<Vec<String>, StoreError> {
        write_set(dir, set(&files(all)))
    }

    #[test]
    fn a_set_is_written_after_all_of_it_could_be() {
        let dir = folder();
        let into = dir.path().join("prints").join("sunday");
        put(&into, &[("a.pdf", "one"), ("b.pdf", "two")]).unwrap();
        assert_eq!(names(&into), [LIST, "a.pdf", "b.pdf"]);
        // The second cannot be written, so the first is not replaced.
        fs::remove_file(into.join("b.pdf")).unwrap();
        fs::create_dir(into.join("b.pdf")).unwrap();
        let error = put(&into, &[("a.pdf", "new"), ("b.pdf", "new")]).unwrap_err();
        assert_eq!(error.path, into.join("b.pdf"));
        assert_eq!(fs::read(into.join("a.pdf")).unwrap(), b"one");
        assert_eq!(names(&into), [LIST, "a.pdf", "b.pdf"]);
        for name in ["../x", "a/b", "", ".."] {
            let error = put(&into, &[(name, "x")]).unwrap_err();
            assert_eq!(error.key(), "store-bad-name", "{name}");
        }
        // A file where the folder would be.
        let error = put(&into.join("a.pdf"), &[("c.pdf", "new")]).unwrap_err();
        assert_eq!(error.key(), "store-not-a-folder");
    }

    /// What this program wrote is replaced as long as it is as it was written. Whatever somebody changed, wrote or
    /// linked there stays, the whole set with it.
    #[test]
    fn a_set_replaces_only_what_was_written_here() {
        let dir = folder();
        let into = dir.path();
        put(into, &[("a.pdf", "one"), ("b.pdf", "one")]).unwrap();
        put(into, &[("a.pdf", "two"), ("b.pdf", "two")]).unwrap();
        put(into, &[("b.pdf", "three")]).unwrap();
        let refused = |name: &str| {
            let before = fs::read(into.join("a.pdf")).unwrap();
            let error = put(into, &[("a.pdf", "new"), ("b.pdf", "new"), ("c.pdf", "new")]).unwrap_err();
            assert_eq!((error.key(), error.path), ("store-not-ours", into.join(name)));
            assert_eq!(fs::read(into.join("a.pdf")).unwrap(), before);
        };
        for (name, text) in [("b.pdf", "two"), ("b.pdf", "threes"), ("c.pdf", "theirs")] {
            let before = fs::read(into.join(name)).ok();
            fs::write(into.join(name), text).unwrap();
            refused(name);
            fs::remove_file(into.join(name)).unwrap();
            if let Some(before) = before {
                fs::write(into.join(name), before).unwrap();
            }
        }
        // What is there already, word for word, is nobody's loss.
        fs::write(into.join("d.pdf"), "same").unwrap();
        put(into, &[("d.pdf", "same")]).unwrap();
        // It is theirs all the same.
        assert_eq!(put(into, &[("d.pdf", "new")]).unwrap_err().key(), "store-not-ours");
        // A file that may hold somebody's work is never replaced, by this kind of set or another.
        let work = |text| write_set(into, Set { files: &files(&[("plan", text)]), new: &["plan"], needless: &[] });
        work("work").unwrap();
        work("work").unwrap();
        assert_eq!(work("other").unwrap_err().key(), "store-exists");
        assert_eq!(put(into, &[("plan", "other")]).unwrap_err().key(), "store-not-ours");
        // A list that somebody else calls so.
        fs::write(into.join(LIST), "mine").unwrap();
        refused(LIST);
    }

    #[cfg(unix)]
    #[test]
    fn a_set_is_not_written_through_a_link() {
        let dir = folder();
        let (into, outside) = (dir.path().join("prints"), dir.path().join("outside.pdf"));
        fs::create_dir(&into).unwrap();
        fs::write(&outside, "theirs").unwrap();
        for name in ["a.pdf", LIST] {
            std::os::unix::fs::symlink(&outside, into.join(name)).unwrap();
            assert_eq!(put(&into, &[("a.pdf", "new")]).unwrap_err().key(), "store-not-ours");
            fs::remove_file(into.join(name)).unwrap();
        }
        assert_eq!(fs::read(&outside).unwrap(), b"theirs");
        assert_eq!(names(&into), Vec::<String>::new());
    }

    fn set(files: &[(String, Vec<u8>)]) -> Set<'_> {
        Set { files, new: &[], needless: &[] }
    }

    /// Wherever a run is killed, no sheet of the new set lies beside one of the old; and the next run, which may be of
    /// a third set, finds what it left to be its own, and sweeps up.
    #[test]
    fn no_moment_has_sheets_of_two_sets() {
        let dir = folder();
        let into = dir.path();
        // One of them is the same in all sets.
        let text = |name: &str, set: &str| if name == "same" { "same".to_owned() } else { set.to_owned() };
        let whole =
            |set: &str| ["a", "b", "c", "d", "same"].map(|name| (name.to_owned(), text(name, set).into_bytes()));
        write_set(into, set(&whole("old"))).unwrap();
        let mut moments = Vec::new();
        write_set_seen(into, set(&whole("new")), &mut || {
            let all = names(into).into_iter().map(|name| (name.clone(), fs::read(into.join(name)).unwrap()));
            moments.push(all.collect::<Vec<_>>());
        })
        .unwrap();
        assert_eq!(moments.len(), 8);
        for moment in moments {
            let of = |set: &[u8]| moment.iter().filter(|(name, it)| !name.starts_with('.') && it == set).count();
            assert!(of(b"old") == 0 || of(b"new") == 0, "{moment:?}");
            assert_eq!(of(b"same"), 1, "{moment:?}");
            let left = folder();
            for (name, it) in &moment {
                fs::write(left.path().join(name), it).unwrap();
            }
            write_set(left.path(), set(&whole("third"))).unwrap();
            assert_eq!(names(left.path()), [LIST, "a", "b", "c", "d", "same"]);
        }
    }

    /// What cannot get its name leaves the old set as it was.
    #[test]
    fn a_swap_that_fails_is_taken_back() {
        let dir = folder();
        let path = |name: &str| dir.path().join(name);
        fs::write(path("a"), "old").unwrap();
        let mut waiting = vec![(prepare(&path("a"), b"new").unwrap(), path("a"))];
        waiting.push((prepare(&path("b"), b"new").unwrap(), path("b")));
        fs::create_dir_all(path("b").join("full")).unwrap();
        assert_eq!(swap(waiting, vec![path("a")], &mut || ()).unwrap_err().path, path("b"));
        assert_eq!((names(dir.path()), fs::read(path("a")).unwrap()), (vec!["a".into(), "b".into()], b"old".to_vec()));
    }

    /// What an earlier set left goes; what somebody else wrote under that name stays, and so does a link.
    #[test]
    fn a_set_takes_out_what_it_has_no_more() {
        let dir = folder();
        put(dir.path(), &[("look.pdf", "ours"), ("look-fr.pdf", "ours"), ("mine.pdf", "ours")]).unwrap();
        fs::write(dir.path().join("look-fr.pdf"), "theirs").unwrap();
        let needless = ["look.pdf", "look-fr.pdf", "never.pdf"].map(str::to_owned);
        let set = Set { files: &files(&[("card.pdf", "x")]), new: &[], needless: &needless };
        assert_eq!(write_set(dir.path(), set).unwrap(), ["look.pdf"]);
        assert_eq!(names(dir.path()), [LIST, "card.pdf", "look-fr.pdf", "mine.pdf"]);
    }

    #[test]
    fn a_text_is_rewritten_as_long_as_it_is_what_was_read() {
        let dir = folder();
        let path = dir.path().join("plan.toml");
        rewrite(&path, "gone", "one").unwrap();
        rewrite(&path, "one", "two").unwrap();
        let error = rewrite(&path, "one", "three").unwrap_err();
        assert_eq!((error.key(), fs::read(&path).unwrap()), ("store-changed", b"two".to_vec()));
    }

    /// A pipe with a name that nobody writes to. Near miss: one that somebody does.
    #[cfg(unix)]
    #[test]
    fn a_pipe_without_a_writer_is_given_up() {
        let dir = folder();
        let pipe = |name: &str| {
            let pipe = dir.path().join(name);
            assert!(std::process::Command::new("mkfifo").arg(&pipe).status().unwrap().success());
            pipe
        };
        assert_eq!(read_text(&pipe("silent")).unwrap_err().key(), "store-silent");
        let into = pipe("written");
        let from = into.clone();
        let writer = thread::spawn(move || fs::write(into, "format = 1\n").unwrap());
        assert_eq!(read_text(&from).unwrap(), "format = 1\n");
        writer.join().unwrap();
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

    /// What a killed run left goes at once, for whoever is alive holds the folder; where one does, what is old.
    #[test]
    fn what_a_killed_run_left_is_swept_up() {
        let dir = folder();
        let drafts = Drafts::at(dir.path());
        let name = Id::new("camp").unwrap();
        drafts.begin(&name).unwrap().save("x").unwrap();
        let (old, new) = (".tallywatt-1.part", ".tallywatt-2.part");
        for half in [old, new] {
            let file = File::create(drafts.folder().join(half)).unwrap();
            let passed = Duration::from_secs(if half == old { 4000 } else { 0 });
            let made = file.metadata().unwrap().modified().unwrap();
            file.set_modified(made - passed).unwrap();
        }
        let there = || [old, new].map(|half| drafts.folder().join(half).exists());
        let alive = lock(drafts.folder()).unwrap();
        assert_eq!(drafts.list().unwrap().len(), 1);
        assert_eq!(there(), [false, true]);
        drop(alive);
        assert_eq!(drafts.list().unwrap().len(), 1);
        assert_eq!(there(), [false, false]);
    }
}
