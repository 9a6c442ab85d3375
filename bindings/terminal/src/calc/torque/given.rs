//! The terminal that goes in.

use crate::calc::shape::Word;
use crate::calc::{Fault, at};
use baywalk_domain::rig::{
    BoltGrade, Drive, DriveKind, Fastening, FasteningKind, Landing, Locking, MakerTorque, Material,
    Nut, Recheck, Role, Strands, Terminal, Thread, ThreadState, TorqueBasis, Washer, WireSize,
};
use baywalk_domain::torque::Past;
use baywalk_domain::units::{Stated, StatedLength};
use schemars::JsonSchema;
use serde::Deserialize;

/// A terminal, as far as it is known.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(in crate::calc) struct Given {
    /// What holds the conductor.
    fastening: Word<FasteningKind>,
    /// The thread, such as #10-32 or M6.
    thread: Option<String>,
    /// The drives of the head, the one in use first.
    #[serde(default)]
    drives: Vec<DriveIn>,
    landing: Option<Word<Landing>>,
    nut: Option<Word<Nut>>,
    washer: Option<Word<Washer>>,
    locking: Option<Word<Locking>>,
    grade: Option<Word<BoltGrade>>,
    /// Whether the joint clamps metal on metal, with no plastic in between.
    #[serde(default)]
    metal_to_metal: bool,
    role: Option<Word<Role>>,
    wire: Option<WireIn>,
    /// How many conductors are landed; one where left out.
    landed: Option<u8>,
    /// How many are allowed by the marking; one where left out.
    allowed: Option<u8>,
    /// The smallest and the largest size that the terminal is marked for.
    range: Option<(String, String)>,
    thread_state: Option<Word<ThreadState>>,
    maker: Option<MakerIn>,
    /// What is known from earlier walks and from the look just taken.
    pub(super) past: Option<PastIn>,
    /// At what share of the target it is checked, 80 to 90 %.
    pub(super) check_percent: Option<u8>,
}

/// What a tool fits into.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct DriveIn {
    kind: Word<DriveKind>,
    /// Size across flats, such as 3/16 in.
    across: Option<String>,
    /// Width of a slot, such as 0.047 in.
    slot_width: Option<String>,
    /// Length of a slot at its bottom, such as 1/4 in.
    slot_length: Option<String>,
}

/// The conductor.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct WireIn {
    /// Its size, such as 6 AWG, 250 kcmil or 2.5 mm2.
    size: Option<String>,
    material: Option<Word<Material>>,
    strands: Option<Word<Strands>>,
}

/// A torque of the maker.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct MakerIn {
    /// The figure as printed, such as 45 lbf.in.
    torque: String,
    basis: Word<TorqueBasis>,
    /// Which label or document.
    source: String,
    recheck: Option<Word<Recheck>>,
}

/// What is known from before and seen now.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct PastIn {
    /// Walks running in which it moved.
    #[serde(default)]
    moved_running: u8,
    /// Whether heat or broken strands are seen now.
    #[serde(default)]
    spoiled: bool,
    /// Whether the paint mark is out of line now.
    #[serde(default)]
    mark_offset: bool,
}

impl From<PastIn> for Past {
    fn from(given: PastIn) -> Self {
        Self {
            moved_running: given.moved_running,
            spoiled: given.spoiled,
            mark_offset: given.mark_offset,
        }
    }
}

impl TryFrom<Given> for Terminal {
    type Error = Fault;
    fn try_from(given: Given) -> Result<Self, Fault> {
        let size = |text: &str, field| WireSize::parse(text).map_err(at(field));
        let mut terminal = Self::of(given.fastening()?);
        set(&mut terminal.role, given.role);
        set(&mut terminal.thread_state, given.thread_state);
        if let Some(wire) = given.wire {
            let text = wire.size.as_deref();
            terminal.wire.size = text.map(|text| size(text, "wire.size")).transpose()?;
            set(&mut terminal.wire.material, wire.material);
            set(&mut terminal.wire.strands, wire.strands);
        }
        terminal.landed = given.landed.unwrap_or(terminal.landed);
        terminal.allowed = given.allowed.unwrap_or(terminal.allowed);
        if let Some((least, most)) = given.range {
            terminal.range = Some((size(&least, "range")?, size(&most, "range")?));
        }
        terminal.maker = given.maker.map(MakerTorque::try_from).transpose()?;
        terminal.checked().map_err(at("maker"))
    }
}

/// Puts a word where it was given.
fn set<C>(place: &mut C, word: Option<Word<C>>) {
    if let Some(word) = word {
        *place = word.0;
    }
}

impl Given {
    fn fastening(&self) -> Result<Fastening, Fault> {
        let mut fastening = Fastening::of(self.fastening.0);
        let thread = self.thread.as_deref().map(Thread::parse);
        fastening.thread = thread.transpose().map_err(at("thread"))?;
        fastening.drives = self
            .drives
            .iter()
            .map(Drive::try_from)
            .collect::<Result<_, _>>()?;
        set(&mut fastening.landing, self.landing);
        set(&mut fastening.nut, self.nut);
        set(&mut fastening.washer, self.washer);
        set(&mut fastening.locking, self.locking);
        fastening.grade = self.grade.map(|word| word.0);
        fastening.metal_to_metal = self.metal_to_metal;
        Ok(fastening)
    }
}

impl TryFrom<&DriveIn> for Drive {
    type Error = Fault;
    fn try_from(given: &DriveIn) -> Result<Self, Fault> {
        let length = |text: &Option<String>, field| {
            let stated = text.as_deref().map(StatedLength::parse);
            stated.transpose().map_err(at(field))
        };
        Ok(Self {
            kind: given.kind.0,
            across: length(&given.across, "drives.across")?,
            slot_width: length(&given.slot_width, "drives.slot_width")?,
            slot_length: length(&given.slot_length, "drives.slot_length")?,
        })
    }
}

impl TryFrom<MakerIn> for MakerTorque {
    type Error = Fault;
    fn try_from(given: MakerIn) -> Result<Self, Fault> {
        Ok(Self {
            torque: Stated::parse_pair(&given.torque).map_err(at("maker.torque"))?,
            basis: given.basis.0,
            source: given.source,
            recheck: given.recheck.map_or(Recheck::Unsaid, |word| word.0),
        })
    }
}
