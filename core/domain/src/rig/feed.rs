//! What a set of conductors is wired to.

use super::{Code, CodeFault};

/// One thing that a set of conductors is wired to: a source, or a set of a device.
///
/// Written as people write it: `S1` for a source, `FTS/shore in` for a set of device `FTS`.
///
/// # Example
/// ```
/// use baywalk_domain::rig::Feed;
/// assert_eq!(Feed::parse("s1")?.text(), "S1");
/// assert_eq!(Feed::parse("fts / shore in")?.text(), "FTS/shore in");
/// assert!(Feed::parse("FTS/").is_err());
/// # Ok::<(), baywalk_domain::rig::FeedFault>(())
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Feed {
    /// A source, by its code.
    Source(Code),
    /// A set of a device: this one or another.
    Set {
        /// The device's code.
        device: Code,
        /// The name of the set in it.
        set: String,
    },
}

/// Why a text names nothing that a set can be wired to.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum FeedFault {
    /// The code in it is none.
    #[error(transparent)]
    Code(#[from] CodeFault),
    /// No name of a set stands behind the stroke.
    #[error("{found:?} names no set; expected a source such as S1 or a set such as FTS/shore in")]
    Set {
        /// What was found.
        found: String,
    },
}

impl Feed {
    /// Reads it from its text.
    ///
    /// # Errors
    /// [`FeedFault`] where the code is none, or no set is named behind the stroke.
    pub fn parse(text: &str) -> Result<Self, FeedFault> {
        let Some((device, set)) = text.split_once('/') else {
            return Ok(Self::Source(Code::parse(text)?));
        };
        let device = Code::parse(device)?;
        let set = set.trim();
        if set.is_empty() {
            return Err(FeedFault::Set {
                found: text.to_owned(),
            });
        }
        let set = set.to_owned();
        Ok(Self::Set { device, set })
    }

    /// Whether it is a set of another device than the one with a code.
    #[must_use]
    pub fn is_elsewhere(&self, code: &Code) -> bool {
        matches!(self, Self::Set { device, .. } if device != code)
    }

    /// Its text.
    #[must_use]
    pub fn text(&self) -> String {
        match self {
            Self::Source(source) => source.to_string(),
            Self::Set { device, set } => format!("{device}/{set}"),
        }
    }
}

/// What opens when a source is taken away: a device, or one set of it where the others stay joined.
///
/// Written as `EDS` for a device and `EPV/array one` for a set of it.
///
/// # Example
/// ```
/// use baywalk_domain::rig::Opening;
/// assert_eq!(Opening::parse("eds")?.text(), "EDS");
/// assert_eq!(Opening::parse("EPV/array one")?.set.as_deref(), Some("array one"));
/// # Ok::<(), baywalk_domain::rig::FeedFault>(())
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Opening {
    /// The device's code.
    pub device: Code,
    /// The set that is parted from the device's others; `None` where all are parted.
    pub set: Option<String>,
}

impl Opening {
    /// Reads it from its text.
    ///
    /// # Errors
    /// [`FeedFault`] where the code is none, or no set is named behind the stroke.
    pub fn parse(text: &str) -> Result<Self, FeedFault> {
        Ok(match Feed::parse(text)? {
            Feed::Source(device) => Self { device, set: None },
            Feed::Set { device, set } => Self {
                device,
                set: Some(set),
            },
        })
    }

    /// Its text.
    #[must_use]
    pub fn text(&self) -> String {
        match &self.set {
            Some(set) => format!("{}/{set}", self.device),
            None => self.device.to_string(),
        }
    }
}
