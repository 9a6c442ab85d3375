//! What holds a conductor, and the conductor, in words.

use baywalk_domain::rig::Terminal;
use baywalk_words::Words;

/// What holds the conductor, its thread, the conductor, how many are landed and allowed.
pub(crate) fn holds(words: &Words, terminal: &Terminal) -> String {
    let wire = &terminal.wire;
    let thread = terminal
        .fastening
        .thread
        .as_ref()
        .map(|thread| thread.text().to_owned());
    let size = wire.size.as_ref().map(baywalk_domain::rig::WireSize::code);
    let wire = [
        size,
        Some(words.code(wire.material)),
        Some(words.code(wire.strands)),
    ];
    let wire = wire.into_iter().flatten().collect::<Vec<_>>().join(" ");
    let landed = words.fill(
        "point-landed",
        &[
            ("landed", terminal.landed.into()),
            ("allowed", terminal.allowed.into()),
        ],
    );
    let parts = [
        Some(words.code(terminal.fastening.kind)),
        thread,
        Some(wire),
        Some(landed),
    ];
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}
