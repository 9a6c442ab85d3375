//! The calls themselves. Each goes on by the bare system call, so that none calls itself.

#![expect(
    unsafe_code,
    reason = "a call of the C library can only be stood in for by an unmangled C function; each \
              passes on what it was given, unread but for paths and written bytes"
)]
#![expect(
    clippy::cast_possible_truncation,
    reason = "the system's own answers go back in the C library's own types, as its manual has them"
)]

use super::fault::{Asks, Verdict};
use super::watch::with;
use libc::{c_char, c_int, c_long, c_void, mode_t, off_t, size_t, ssize_t};
use std::ffi::{CStr, OsStr};
use std::os::unix::ffi::OsStrExt;
use std::path::{Path, PathBuf};

/// The name below the watched folder; `None` where none is watched or the path lies elsewhere.
unsafe fn below(path: *const c_char) -> Option<PathBuf> {
    with(|watch| {
        // SAFETY: callers of the C library pass a path that ends in a zero byte.
        let bytes = unsafe { CStr::from_ptr(path) }.to_bytes();
        watch.below(Path::new(OsStr::from_bytes(bytes)))
    })
    .flatten()
}

fn watched(fd: c_int) -> bool {
    fd >= 0 && with(|watch| watch.has(fd)).unwrap_or(false)
}

fn ask(asks: Asks) -> Verdict {
    with(|watch| watch.ask(asks)).unwrap_or(Verdict::Go)
}

/// Fails a call with an error number.
fn fail(error: c_int) -> c_long {
    // SAFETY: the place of this thread's error number is always there.
    unsafe { *libc::__errno_location() = error };
    -1
}

/// Asks for a call that has no part way, and makes it.
fn plain(asks: Asks, call: impl FnOnce() -> c_long) -> c_long {
    match ask(asks) {
        Verdict::Fail(error) => fail(error),
        Verdict::Go | Verdict::Short(_) => call(),
    }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn open64(path: *const c_char, flags: c_int, mode: mode_t) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_openat, libc::AT_FDCWD, path, flags, mode) };
    // SAFETY: as `below` asks.
    let Some(name) = (unsafe { below(path) }) else {
        return call() as c_int;
    };
    let asks = if flags & libc::O_CREAT != 0 && !there(path) {
        Asks::Room
    } else {
        Asks::Nothing
    };
    let fd = plain(asks, call) as c_int;
    if fd >= 0 {
        let cut = flags & libc::O_TRUNC != 0;
        with(|watch| watch.opened(fd, name, (is_folder(fd), cut)));
    }
    fd
}

fn there(path: *const c_char) -> bool {
    // SAFETY: passed on as it came.
    unsafe { libc::syscall(libc::SYS_faccessat, libc::AT_FDCWD, path, libc::F_OK) == 0 }
}

fn is_folder(fd: c_int) -> bool {
    // SAFETY: a record of all zeros is one of its kind, and the call fills it.
    let mut about: libc::stat = unsafe { std::mem::zeroed() };
    // SAFETY: it lives through the call.
    let done = unsafe { libc::syscall(libc::SYS_fstat, fd, &raw mut about) };
    done == 0 && about.st_mode & libc::S_IFMT == libc::S_IFDIR
}

#[unsafe(no_mangle)]
unsafe extern "C" fn open(path: *const c_char, flags: c_int, mode: mode_t) -> c_int {
    // SAFETY: the same call.
    unsafe { open64(path, flags, mode) }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn close(fd: c_int) -> c_int {
    if watched(fd) {
        with(|watch| watch.closed(fd));
    }
    // SAFETY: passed on as it came.
    unsafe { libc::syscall(libc::SYS_close, fd) as c_int }
}

unsafe fn reads(fd: c_int, call: impl FnOnce() -> c_long) -> ssize_t {
    if !watched(fd) {
        return call() as ssize_t;
    }
    let got = plain(Asks::Nothing, call) as ssize_t;
    with(|watch| watch.read(usize::try_from(got).unwrap_or(0)));
    got
}

#[unsafe(no_mangle)]
unsafe extern "C" fn read(fd: c_int, to: *mut c_void, length: size_t) -> ssize_t {
    // SAFETY: passed on as it came.
    unsafe { reads(fd, || libc::syscall(libc::SYS_read, fd, to, length)) }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn pread64(fd: c_int, to: *mut c_void, length: size_t, at: off_t) -> ssize_t {
    // SAFETY: passed on as it came.
    unsafe { reads(fd, || libc::syscall(libc::SYS_pread64, fd, to, length, at)) }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn pread(fd: c_int, to: *mut c_void, length: size_t, at: off_t) -> ssize_t {
    // SAFETY: the same call.
    unsafe { pread64(fd, to, length, at) }
}

/// Writes at a place, as much as is let.
unsafe fn writes(
    fd: c_int,
    (from, length): (*const c_void, size_t),
    at: impl FnOnce() -> off_t,
    call: impl FnOnce(size_t) -> c_long,
) -> ssize_t {
    if !watched(fd) {
        return call(length) as ssize_t;
    }
    let at = at();
    let done = match ask(Asks::Bytes(length)) {
        Verdict::Fail(error) => fail(error),
        Verdict::Short(length) => call(length),
        Verdict::Go => call(length),
    };
    if let (Ok(written), Ok(at)) = (usize::try_from(done), usize::try_from(at)) {
        // SAFETY: the system has just read so many bytes from there.
        let bytes = unsafe { std::slice::from_raw_parts(from.cast::<u8>(), written) };
        with(|watch| watch.wrote(fd, at, bytes));
    }
    done as ssize_t
}

#[unsafe(no_mangle)]
unsafe extern "C" fn write(fd: c_int, from: *const c_void, length: size_t) -> ssize_t {
    // SAFETY: passed on as it came; the place is asked for first.
    unsafe {
        writes(
            fd,
            (from, length),
            || libc::syscall(libc::SYS_lseek, fd, 0, libc::SEEK_CUR) as off_t,
            |length| libc::syscall(libc::SYS_write, fd, from, length),
        )
    }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn pwrite64(
    fd: c_int,
    from: *const c_void,
    length: size_t,
    at: off_t,
) -> ssize_t {
    // SAFETY: passed on as it came.
    unsafe {
        writes(
            fd,
            (from, length),
            || at,
            |length| libc::syscall(libc::SYS_pwrite64, fd, from, length, at),
        )
    }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn pwrite(fd: c_int, from: *const c_void, length: size_t, at: off_t) -> ssize_t {
    // SAFETY: the same call.
    unsafe { pwrite64(fd, from, length, at) }
}

/// Makes a call on an open file, and notes it where it went well.
fn on_file(
    fd: c_int,
    asks: Asks,
    call: impl FnOnce() -> c_long,
    note: impl FnOnce(&mut super::watch::Watch),
) -> c_long {
    if !watched(fd) {
        return call();
    }
    let done = plain(asks, call);
    if done >= 0 {
        with(note);
    }
    done
}

#[unsafe(no_mangle)]
unsafe extern "C" fn fsync(fd: c_int) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_fsync, fd) };
    on_file(fd, Asks::Nothing, call, |watch| watch.synced(fd)) as c_int
}

#[unsafe(no_mangle)]
unsafe extern "C" fn fdatasync(fd: c_int) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_fdatasync, fd) };
    on_file(fd, Asks::Nothing, call, |watch| watch.synced(fd)) as c_int
}

#[unsafe(no_mangle)]
unsafe extern "C" fn ftruncate64(fd: c_int, length: off_t) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_ftruncate, fd, length) };
    let set = usize::try_from(length).unwrap_or(0);
    on_file(fd, Asks::Room, call, |watch| watch.sized(fd, set)) as c_int
}

#[unsafe(no_mangle)]
unsafe extern "C" fn ftruncate(fd: c_int, length: off_t) -> c_int {
    // SAFETY: the same call.
    unsafe { ftruncate64(fd, length) }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn fstat64(fd: c_int, about: *mut c_void) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_fstat, fd, about) };
    on_file(fd, Asks::Nothing, call, |_| {}) as c_int
}

#[unsafe(no_mangle)]
unsafe extern "C" fn fstat(fd: c_int, about: *mut c_void) -> c_int {
    // SAFETY: the same call.
    unsafe { fstat64(fd, about) }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn fcntl64(fd: c_int, order: c_int, with: *mut c_void) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_fcntl, fd, order, with) };
    on_file(fd, Asks::Nothing, call, |_| {}) as c_int
}

#[unsafe(no_mangle)]
unsafe extern "C" fn fcntl(fd: c_int, order: c_int, with: *mut c_void) -> c_int {
    // SAFETY: the same call.
    unsafe { fcntl64(fd, order, with) }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn flock(fd: c_int, order: c_int) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_flock, fd, order) };
    on_file(fd, Asks::Nothing, call, |_| {}) as c_int
}

#[unsafe(no_mangle)]
unsafe extern "C" fn mmap64(
    near: *mut c_void,
    length: size_t,
    protection: c_int,
    flags: c_int,
    fd: c_int,
    at: off_t,
) -> *mut c_void {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_mmap, near, length, protection, flags, fd, at) };
    on_file(fd, Asks::Room, call, |_| {}) as *mut c_void
}

#[unsafe(no_mangle)]
unsafe extern "C" fn mmap(
    near: *mut c_void,
    length: size_t,
    protection: c_int,
    flags: c_int,
    fd: c_int,
    at: off_t,
) -> *mut c_void {
    // SAFETY: the same call.
    unsafe { mmap64(near, length, protection, flags, fd, at) }
}

/// Makes a call on a name, and notes it where it went well.
unsafe fn on_name(
    path: *const c_char,
    asks: Asks,
    call: impl FnOnce() -> c_long,
    note: impl FnOnce(&mut super::watch::Watch, PathBuf),
) -> c_int {
    // SAFETY: as `below` asks.
    let Some(name) = (unsafe { below(path) }) else {
        return call() as c_int;
    };
    let done = plain(asks, call);
    if done >= 0 {
        with(|watch| note(watch, name));
    }
    done as c_int
}

#[unsafe(no_mangle)]
unsafe extern "C" fn unlink(path: *const c_char) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_unlinkat, libc::AT_FDCWD, path, 0) };
    // SAFETY: as `below` asks.
    unsafe {
        on_name(path, Asks::Nothing, call, |watch, name| {
            watch.unlinked(name)
        })
    }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn access(path: *const c_char, mode: c_int) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_faccessat, libc::AT_FDCWD, path, mode) };
    // SAFETY: as `below` asks.
    unsafe { on_name(path, Asks::Nothing, call, |_, _| {}) }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn mkdir(path: *const c_char, mode: mode_t) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe { libc::syscall(libc::SYS_mkdirat, libc::AT_FDCWD, path, mode) };
    // SAFETY: as `below` asks.
    unsafe { on_name(path, Asks::Room, call, |watch, name| watch.made(name)) }
}

#[unsafe(no_mangle)]
unsafe extern "C" fn rename(from: *const c_char, to: *const c_char) -> c_int {
    // SAFETY: passed on as it came.
    let call = || unsafe {
        let here = libc::AT_FDCWD;
        libc::syscall(libc::SYS_renameat2, here, from, here, to, 0)
    };
    // SAFETY: as `below` asks.
    let new = unsafe { below(to) };
    // SAFETY: as `below` asks.
    unsafe {
        on_name(from, Asks::Room, call, |watch, name| {
            if let Some(new) = new {
                watch.renamed(name, new);
            }
        })
    }
}

/// Copies within the system would not be seen: a watched file is read and written instead.
#[unsafe(no_mangle)]
unsafe extern "C" fn copy_file_range(
    from: c_int,
    from_at: *mut off_t,
    to: c_int,
    to_at: *mut off_t,
    length: size_t,
    flags: u32,
) -> ssize_t {
    if watched(to) {
        return fail(libc::EXDEV) as ssize_t;
    }
    let number = libc::SYS_copy_file_range;
    // SAFETY: passed on as it came.
    unsafe { libc::syscall(number, from, from_at, to, to_at, length, flags) as ssize_t }
}

/// As for `copy_file_range`.
#[unsafe(no_mangle)]
unsafe extern "C" fn sendfile64(to: c_int, from: c_int, at: *mut off_t, length: size_t) -> ssize_t {
    if watched(to) {
        return fail(libc::EINVAL) as ssize_t;
    }
    // SAFETY: passed on as it came.
    unsafe { libc::syscall(libc::SYS_sendfile, to, from, at, length) as ssize_t }
}

/// Whoever waits for a lock that fails needs no time for it: a watching thread does not sleep.
#[unsafe(no_mangle)]
unsafe extern "C" fn nanosleep(wait: *const c_void, left: *mut c_void) -> c_int {
    if with(|_| ()).is_some() {
        return 0;
    }
    // SAFETY: passed on as it came.
    unsafe { libc::syscall(libc::SYS_nanosleep, wait, left) as c_int }
}
