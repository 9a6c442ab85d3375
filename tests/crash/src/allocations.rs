//! One allocation of the database engine failed, at every place in turn.

#![expect(
    unsafe_code,
    reason = "the engine takes its allocator as C functions; each passes on to the one it had"
)]

use rusqlite::ffi;
use std::cell::Cell;
use std::ffi::{c_int, c_void};
use std::sync::OnceLock;

thread_local! {
    /// How many allocations were asked for, which one fails, and whether all after it do.
    static ASKED: Cell<(u64, u64, bool)> = const { Cell::new((0, 0, false)) };
}

type Malloc = unsafe extern "C" fn(c_int) -> *mut c_void;
type Realloc = unsafe extern "C" fn(*mut c_void, c_int) -> *mut c_void;

/// The engine's own.
static FIRST: OnceLock<(Malloc, Realloc)> = OnceLock::new();

/// Stands in for the engine's allocator; call it before any database is opened in the process.
pub fn stand_in() {
    // SAFETY: a record of null pointers is one of its kind, and the call fills it.
    let mut first: ffi::sqlite3_mem_methods = unsafe { std::mem::zeroed() };
    // SAFETY: nothing of the engine runs yet, and the records live through the calls.
    unsafe {
        let got = ffi::sqlite3_config(ffi::SQLITE_CONFIG_GETMALLOC, &raw mut first);
        assert_eq!(got, ffi::SQLITE_OK);
        let mut ours = first;
        ours.xMalloc = Some(malloc);
        ours.xRealloc = Some(realloc);
        let own = first.xMalloc.zip(first.xRealloc).unwrap();
        FIRST.get_or_init(|| own);
        let set = ffi::sqlite3_config(ffi::SQLITE_CONFIG_MALLOC, &raw mut ours);
        assert_eq!(set, ffi::SQLITE_OK);
        // Each small piece is asked for too, not taken from a store of the connection.
        let none: c_int = 0;
        ffi::sqlite3_config(ffi::SQLITE_CONFIG_LOOKASIDE, none, none);
    }
}

/// Fails the allocation of a number in this thread, and perhaps all after it; 0 fails none.
pub fn fail(at: u64, for_good: bool) {
    ASKED.set((0, at, for_good));
}

/// How many were asked for since.
#[must_use]
pub fn asked() -> u64 {
    ASKED.get().0
}

fn fails() -> bool {
    let (asked, at, for_good) = ASKED.get();
    let asked = asked + 1;
    ASKED.set((asked, at, for_good));
    at > 0 && (asked == at || for_good && asked > at)
}

unsafe extern "C" fn malloc(bytes: c_int) -> *mut c_void {
    match FIRST.get() {
        // SAFETY: passed on as it came.
        Some((malloc, _)) if !fails() => unsafe { malloc(bytes) },
        _ => std::ptr::null_mut(),
    }
}

unsafe extern "C" fn realloc(piece: *mut c_void, bytes: c_int) -> *mut c_void {
    match FIRST.get() {
        // SAFETY: passed on as it came.
        Some((_, realloc)) if !fails() => unsafe { realloc(piece, bytes) },
        _ => std::ptr::null_mut(),
    }
}
