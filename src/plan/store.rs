//! Plans, prints and drafts on disk. Part of the shell: the only place that writes files.
//!
//! A file is first written in full under a temporary name beside its destination, synced to disk, and then renamed into
//! place. At any moment, and whatever fails, the destination is the old file or the new one and never half of either.
//!
//! No work of the user's is lost. A file is written where there is none ([`write_new`]), over the text that was read
//! from it ([`rewrite`]), or into a folder of prints over unchanged files that this program wrote there
//! ([`write_set`]). Code outside this crate has no other way to write over a file.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::fs::{self, File};
use std::hash::Hasher as _;
use std::io::{self, ErrorKind, Read, Write};
use std::path::{Path, PathBuf};
use std::thread;
use std::time::{Duration, SystemTime};

use fnv::FnvHasher;
use tempfile::{Builder, NamedTempFile, TempPath};

use super::Id;

/// The largest plan file that is read, in bytes. A plan with the most parts it may have is far smaller.
pub const LARGEST_PLAN: u64 = 4 * 1024 * 1024;

/// The prefix and suffix of the name of a file that is being written.
const HALF: (&str, &str) = (".tallywatt-", ".part");

/// Why a file could not be read or written. The text is the message [`StoreError::key`] with the values `path`,
/// `reason` and `line`; see [`crate::words::problem::store`].
#[derive(Debug, thiserror::Error)]
#[error("{}: {}", self.path.display(), self.key())]
pub struct StoreError {
    /// The file or folder.
    pub path: PathBuf,
    /// Whether it was to be written.
    pub writing: bool,
    /// What is wrong with it.
    pub fault: Fault,
}

/// What is wrong with a file.
#[derive(Debug)]
pub enum Fault {
    /// The system reported an error.
    System(io::Error),
    /// It is a folder.
    Folder,
    /// Something of that name exists, but the file was to be new.
    Exists,
    /// It is not what this program wrote there.
    NotOurs,
    /// It no longer holds what was read from it.
    Changed,
    /// It is a named pipe that nobody writes to.
    Silent,
    /// Its name is not a valid file name here.
    Name,
    /// It is larger than [`LARGEST_PLAN`].
    TooLarge,
    /// It is not UTF-8 text.
    NotText {
        /// The first line that is not, counting from 1.
        line: usize,
    },
    /// Another run of the program has this draft open.
    InUse,
}

impl StoreError {
    /// Creates the error of a file that could not be read.
    #[must_use]
    pub fn read(path: &Path, fault: Fault) -> Self {
        Self { path: path.to_owned(), writing: false, fault }
    }

    fn write(path: &Path, fault: Fault) -> Self {
        Self { path: path.to_owned(), writing: true, fault }
    }

    /// Returns the message key.
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
                // A file stands where a folder was to be made.
                ErrorKind::AlreadyExists if self.writing => "store-not-a-folder",
                _ if self.writing => "store-cannot-write",
                _ => "store-cannot-read",
            },
        }
    }
}

/// Reads a text file such as a plan: UTF-8, at most [`LARGEST_PLAN`] bytes, without the byte order mark that some
/// editors add.
///
/// # Errors
/// Returns an error if there is no such file, or it is not text or too large.
pub fn read_text(path: &Path) -> Result<String, StoreError> {
    let file = open(path)?;
    if file.metadata().is_ok_and(|about| about.is_dir()) {
        return Err(StoreError::read(path, Fault::Folder));
    }
    read_from(file, path)
}

/// How long to wait for a writer to open a named pipe.
#[cfg(unix)]
const BEGINS: Duration = Duration::from_secs(5);

/// Opens a file for reading. A named pipe opens only when somebody writes to it, so it is given up after five seconds.
///
/// # Errors
/// Returns an error if the file does not exist or cannot be read, or nobody writes to the pipe.
pub fn open(path: &Path) -> Result<File, StoreError> {
    let fail = |error| StoreError::read(path, Fault::System(error));
    #[cfg(unix)]
    if fs::metadata(path).is_ok_and(|about| std::os::unix::fs::FileTypeExt::is_fifo(&about.file_type())) {
        let (send, opened) = std::sync::mpsc::channel();
        let pipe = path.to_owned();
        // If nobody writes, this thread waits on but the program does not.
        thread::spawn(move || send.send(File::open(pipe)));
        let opened = opened.recv_timeout(BEGINS).map_err(|_| StoreError::read(path, Fault::Silent))?;
        return opened.map_err(fail);
    }
    File::open(path).map_err(fail)
}

/// Reads text from any reader, such as standard input, as [`read_text`] does. `path` is its name in errors.
///
/// # Errors
/// Returns an error if it cannot be read, or is not text or too large.
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

/// Reads every file below a folder whose name ends in `.` and `end`. Returns the texts by their paths in the folder,
/// with `/` as the separator.
///
/// # Errors
/// Returns an error if the folder or one of these files cannot be read.
pub fn read_folder(dir: &Path, end: &str) -> Result<BTreeMap<String, String>, StoreError> {
    // Deeper than anyone keeps templates, and a limit for links that lead back up.
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

/// Writes a file in full or not at all. An existing file keeps its permissions. A link stays a link, and its target is
/// replaced. Only for files that belong to this program.
///
/// # Errors
/// Returns an error if the file cannot be written. Its old contents are then unchanged.
pub(crate) fn write_atomic(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let path = &real(path);
    let _held = hold(folder_of(path));
    let waiting = prepare(path, bytes)?;
    settle(waiting, path)?;
    sync_folder(folder_of(path));
    Ok(())
}

/// Replaces a text file in full or not at all, provided that it still holds `read` or is gone.
///
/// # Errors
/// Returns an error if it holds something else by now, or cannot be written.
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

/// Checks that nothing exists at the path, not even a link.
///
/// # Errors
/// Returns an error if something does, or if that cannot be determined.
pub fn is_free(path: &Path) -> Result<(), StoreError> {
    match path.symlink_metadata() {
        Ok(_) => Err(StoreError::write(path, Fault::Exists)),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(()),
        Err(error) => Err(StoreError::write(path, Fault::System(error))),
    }
}

/// Writes a new file in full or not at all. Anything that appears there in the meantime, even a link, is left alone.
///
/// # Errors
/// Returns an error if something of that name exists, or the file cannot be written.
pub fn write_new(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let _held = hold(folder_of(path));
    let waiting = prepare_new(path, bytes)?;
    settle_new(waiting, path)?;
    sync_folder(folder_of(path));
    Ok(())
}

/// Writes a set of new files into a folder, which is created if necessary. Writes none of them if one already exists.
///
/// # Errors
/// Returns an error if a file exists or cannot be written. The error has its path.
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
            // This call created these files.
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

/// What to write into a folder of prints, and what to remove from it.
#[derive(Clone, Copy, Debug)]
pub struct Set<'a> {
    /// The files, by name.
    pub files: &'a [(String, Vec<u8>)],
    /// The names of files that never replace anything, because a file there may hold someone's work even if this
    /// program wrote it.
    pub new: &'a [&'a str],
    /// The names of files that an earlier set may have left and this one does not need.
    pub needless: &'a [String],
}

/// Writes a set of files into a folder, which is created if necessary. Returns the names of the needless files that
/// were removed.
///
/// Every file is first written under a temporary name, so that a full disk leaves the old set complete. Then the old
/// files that are replaced are moved away, and the new ones get their names. Whenever the run is stopped, the folder
/// never holds files of two different sets.
///
/// # Errors
/// Returns an error if a file cannot be written or removed, or exists and is not what this program wrote. The error has
/// its path, and the old set is then complete.
pub fn write_set(dir: &Path, set: Set<'_>) -> Result<Vec<String>, StoreError> {
    write_set_seen(dir, set, &mut || ())
}

/// Does the work of [`write_set`], and calls `seen` after every step that changes a name.
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
            // A file that already has the right contents may be someone's own, and is never touched.
            Some(found) if found == *bytes => continue,
            Some(_) if new => return Err(StoreError::write(&path, Fault::Exists)),
            Some(found) if before.has(name, &found) => old.push(path.clone()),
            Some(_) => return Err(StoreError::write(&path, Fault::NotOurs)),
            None => {}
        }
        // A file that may hold someone's work is never listed as this program's, so it is never replaced.
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
    // Until the swap is done, the folder may hold files of either set, so the list has both.
    before.with(&after).write(&list)?;
    swap(waiting, old, seen)?;
    after.write(&list)?;
    sync_folder(dir);
    Ok(gone)
}

/// Moves the old files away and renames the new ones into place. If that fails, restores the old ones.
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

/// Returns the contents of a regular file, or `None` if nothing is there. Refuses links.
fn stands(path: &Path) -> Result<Option<Vec<u8>>, StoreError> {
    /// More than any print needs.
    const MOST: u64 = 64 << 20;
    let fail = |error| StoreError::write(path, Fault::System(error));
    match fs::symlink_metadata(path) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
        Err(error) => return Err(fail(error)),
        Ok(about) if about.is_dir() => return Err(StoreError::write(path, Fault::Folder)),
        // A link is someone's own and leads out of the folder.
        Ok(about) if !about.is_file() || about.len() > MOST => return Err(StoreError::write(path, Fault::NotOurs)),
        Ok(_) => {}
    }
    let mut bytes = Vec::new();
    let read = File::open(path).and_then(|file| file.take(MOST).read_to_end(&mut bytes));
    read.map(|_| Some(bytes)).map_err(fail)
}

/// The name of the file, in a folder of prints, that lists what this program wrote there.
const LIST: &str = ".tallywatt";

/// The first line of the list.
const HEAD: &str =
    "# What tallywatt wrote here: it writes over nothing else, and over nothing that was changed since.\n";

/// The files that this program wrote into a folder, as checksums of their contents with their names.
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

    /// Records the current contents of a file.
    fn put(&mut self, name: &str, bytes: &[u8]) {
        self.0.retain(|(_, it)| it != name);
        self.0.insert((sum(bytes), name.to_owned()));
    }

    fn with(&self, other: &Self) -> Self {
        Self(self.0.union(&other.0).cloned().collect())
    }
}

/// Returns a checksum that detects a user's changes and is the same in every build: the 64-bit FNV-1a hash, and the
/// number of bytes.
fn sum(bytes: &[u8]) -> String {
    let mut hash = FnvHasher::default();
    hash.write(bytes);
    format!("{:016x}-{}", hash.finish(), bytes.len())
}

/// Returns the path of a file directly in a folder.
fn file_in(dir: &Path, name: &str) -> Result<PathBuf, StoreError> {
    let path = dir.join(name);
    let parts = Path::new(name).components().count();
    if parts == 1 && path.file_name() == Some(name.as_ref()) {
        Ok(path)
    } else {
        Err(StoreError::write(&path, Fault::Name))
    }
}

/// Returns the path that a write ends up at, with links followed.
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

/// Writes the bytes to a temporary file beside the path and syncs it to disk.
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
        // Renaming over the file would succeed, but its owner made it read-only.
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

/// Returns a builder for temporary files.
fn half() -> Builder<'static, 'static> {
    let mut builder = Builder::new();
    builder.prefix(HALF.0).suffix(HALF.1);
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // The permissions of any new file, from which the user's umask is taken.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    builder
}

fn settle(file: NamedTempFile, path: &Path) -> Result<(), StoreError> {
    file.persist(path).map(drop).map_err(|failed| StoreError::write(path, Fault::System(failed.error)))
}

/// Does the same as [`prepare`] for a path where nothing exists. Checks that first, so that refusing an existing file
/// usually needs no disk space.
fn prepare_new(path: &Path, bytes: &[u8]) -> Result<NamedTempFile, StoreError> {
    is_free(path)?;
    prepare(path, bytes)
}

#[allow(clippy::disallowed_methods)] // only takes the name: the contents replace it as a whole
fn settle_new(file: NamedTempFile, path: &Path) -> Result<(), StoreError> {
    let exists = |error: &io::Error| error.kind() == ErrorKind::AlreadyExists;
    let failed = match file.persist_noclobber(path) {
        Ok(_) => return Ok(()),
        Err(failed) if exists(&failed.error) => {
            return Err(StoreError::write(path, Fault::Exists));
        }
        Err(failed) => failed,
    };
    // Some file systems, such as those of memory cards, can neither rename without replacing nor create hard links.
    // Creating an empty file takes the name on any of them.
    match File::create_new(path) {
        Ok(_) => settle(failed.file, path).inspect_err(|_| {
            let _ = fs::remove_file(path);
        }),
        Err(error) if exists(&error) => Err(StoreError::write(path, Fault::Exists)),
        Err(error) => Err(StoreError::write(path, Fault::System(error))),
    }
}

/// Syncs the rename to disk. Not every system can do this, and the file is complete either way, so a failure is not an
/// error.
fn sync_folder(folder: &Path) {
    #[cfg(unix)]
    if let Ok(folder) = File::open(folder) {
        let _ = folder.sync_all();
    }
    #[cfg(not(unix))]
    let _ = folder;
}

/// Locks a folder and removes partial files that killed runs left there. The lock lasts until the returned file is
/// dropped or the process ends.
///
/// Waits about a second for another run to finish writing. Without the lock, as on some shared file systems, writing
/// goes on, and only partial files older than an hour are removed.
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
            // A file that cannot be removed does no harm.
            let _ = fs::remove_file(half.path());
        }
    }
    held
}

/// Locks the folder for this process. `None` if the system cannot, or if another run keeps the lock for a second.
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
    /// The name of the draft.
    pub name: Id,
    /// When it was last saved, if the system knows.
    pub saved: Option<SystemTime>,
}

/// A draft that only this run of the program has open. Other runs cannot open it until this is dropped or the process
/// ends, because the lock is the operating system's.
#[derive(Debug)]
pub struct Draft {
    name: Id,
    path: PathBuf,
    /// Held for its lock.
    _lock: File,
}

impl Drafts {
    /// Returns the drafts under this folder for application data.
    #[must_use]
    pub fn at(data: &Path) -> Self {
        Self { folder: data.join("drafts") }
    }

    /// Returns the drafts where the platform keeps application data. `None` if there is no such place, as for a user
    /// without a home directory.
    #[must_use]
    pub fn usual() -> Option<Self> {
        directories::ProjectDirs::from("", "", "tallywatt").map(|dirs| Self::at(dirs.data_dir()))
    }

    /// Returns the folder.
    #[must_use]
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Lists all drafts, last saved first.
    ///
    /// # Errors
    /// Returns an error if the folder exists and cannot be read.
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

    /// Begins a draft that only this run has open, under a free name: the stem, or the stem with a number appended.
    ///
    /// # Errors
    /// Returns an error if the folder cannot be created.
    pub fn begin(&self, stem: &Id) -> Result<Draft, StoreError> {
        let head: String = stem.as_str().chars().take(Id::LONGEST - 8).collect();
        let numbered = (2_usize..).filter_map(|number| Id::new(&format!("{head}-{number}")));
        for name in std::iter::once(stem.clone()).chain(numbered) {
            match self.open(&name) {
                // Another run may begin a draft at the same moment and take the name first.
                Err(StoreError { fault: Fault::InUse, .. }) => {}
                Ok(draft) if draft.path.exists() => {}
                other => return other,
            }
        }
        self.open(stem)
    }

    /// Opens a new or existing draft for this run only.
    ///
    /// # Errors
    /// Returns an error if another run has it open, or the folder cannot be created.
    #[allow(clippy::disallowed_methods)] // a lock file is empty
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
            // Some shared file systems have no locks. A draft without a lock is better than no draft.
            Ok(()) | Err(fs::TryLockError::Error(_)) => {}
            Err(fs::TryLockError::WouldBlock) => {
                return Err(StoreError::write(&path, Fault::InUse));
            }
        }
        Ok(Draft { name: name.clone(), path, _lock: lock })
    }
}

impl Draft {
    /// Returns the name of the draft.
    #[must_use]
    pub const fn name(&self) -> &Id {
        &self.name
    }

    /// Returns the path of its file.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Returns its text, or `None` if it was never saved.
    ///
    /// # Errors
    /// Returns an error if there is a file that cannot be read.
    pub fn load(&self) -> Result<Option<String>, StoreError> {
        match read_text(&self.path) {
            Err(StoreError { fault: Fault::System(error), .. }) if error.kind() == ErrorKind::NotFound => Ok(None),
            other => other.map(Some),
        }
    }

    /// Saves its text.
    ///
    /// # Errors
    /// Returns an error if it cannot be written. What was saved before is then unchanged.
    pub fn save(&self, text: &str) -> Result<(), StoreError> {
        write_atomic(&self.path, text.as_bytes())
    }

    /// Removes its file for good.
    ///
    /// # Errors
    /// Returns an error if the file exists and cannot be removed.
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

    /// Returns the names in a folder, including hidden ones.
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

    /// Returns the files of a set from their names and texts.
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
        // The second file cannot be written, so the first is not replaced.
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
        // A file stands in place of the folder.
        let error = put(&into.join("a.pdf"), &[("c.pdf", "new")]).unwrap_err();
        assert_eq!(error.key(), "store-not-a-folder");
    }

    /// Files that this program wrote are replaced if they are unchanged. A file that someone changed, wrote or linked
    /// there stays, and so does the whole old set.
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
        // Writing what is already there loses nothing.
        fs::write(into.join("d.pdf"), "same").unwrap();
        put(into, &[("d.pdf", "same")]).unwrap();
        // The file is still theirs.
        assert_eq!(put(into, &[("d.pdf", "new")]).unwrap_err().key(), "store-not-ours");
        // A file that may hold someone's work is never replaced, whether or not the set names it in `new`.
        let work = |text| write_set(into, Set { files: &files(&[("plan", text)]), new: &["plan"], needless: &[] });
        work("work").unwrap();
        work("work").unwrap();
        assert_eq!(work("other").unwrap_err().key(), "store-exists");
        assert_eq!(put(into, &[("plan", "other")]).unwrap_err().key(), "store-not-ours");
        // Someone else's file may have the name of the list.
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

    /// Wherever a run is killed, the folder never holds sheets of both sets. The next run, even of a third set,
    /// recognizes what was left as its own and cleans up.
    #[test]
    fn no_moment_has_sheets_of_two_sets() {
        let dir = folder();
        let into = dir.path();
        // One sheet is the same in all sets.
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

    /// If a new file cannot get its name, the old set is restored.
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

    /// Files left by an earlier set are removed. A file that someone else wrote under such a name stays.
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

    /// Tests a named pipe that nobody writes to. Near miss: one with a writer.
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
        // No file of the set is written, not even in part.
        let error = write_new_set(dir.path(), [("a", b"x"), ("plan.toml", b"x")]).unwrap_err();
        assert_eq!(error.key(), "store-exists");
        assert_eq!(names(dir.path()), ["plan.toml"]);
        let into = dir.path().join("new");
        write_new_set(&into, [("a", b"x"), ("b", b"y")]).unwrap();
        assert_eq!(names(&into), ["a", "b"]);
    }

    /// A file that appears between the check and the write stays too.
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
        // A draft has its name even before it is saved.
        assert_eq!(drafts.begin(&name).unwrap().name().as_str(), "camp-2");
        draft.save("format = 1\n").unwrap();
        assert_eq!(draft.load().unwrap().as_deref(), Some("format = 1\n"));
        assert_eq!(drafts.begin(&name).unwrap().name().as_str(), "camp-2");

        // Another run is refused while this one has the draft open, and can open it afterward.
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

    /// Partial files of killed runs are removed at once if the folder can be locked, and otherwise only when they are
    /// old.
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
