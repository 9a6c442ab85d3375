//! What a person means by a code or a name.

use baywalk_domain::coded::Coded;
use baywalk_domain::finding::About;
use baywalk_domain::rig::{Book, Code, CodeFault, CodeOwner};

/// What a text is about: a bay, point or source by its code, a reading by its code, the rig by its
/// name; `None` where the rig has none such.
///
/// # Errors
/// [`CodeFault`] where the text is no code at all.
pub fn about(book: &Book, text: &str) -> Result<Option<About>, CodeFault> {
    if let Ok(step) = Coded::from_code(text) {
        return Ok(Some(About::Reading(step)));
    }
    if text == book.rig.name {
        return Ok(Some(About::Rig));
    }
    let code = Code::parse(text)?;
    let mut owners = book.owners(&code);
    Ok(owners.find_map(|owner| match owner {
        CodeOwner::Bay(id) => Some(About::Bay(id)),
        CodeOwner::Point(id) => Some(About::Point(id)),
        CodeOwner::Source(id) => Some(About::Source(id)),
        CodeOwner::Device(_) | CodeOwner::Tool(_) => None,
    }))
}
