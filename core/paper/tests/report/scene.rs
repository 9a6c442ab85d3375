//! All the facts of a report, and the text that a reader sees of it.

use crate::book::{L1_IN, LOOK, N_IN, POST, Pen, SHORE, book};
use crate::walk::{WALK, entries, moment};
use baywalk_domain::due::DueReason;
use baywalk_domain::finding::{About, Decision, Finding, FindingKind, FollowUp, Raised};
use baywalk_domain::ids::{FindingId, PointId, WalkId};
use baywalk_domain::rig::Book;
use baywalk_domain::supply::ReadingStep;
use baywalk_domain::units::Stated;
use baywalk_domain::walk::{DueShown, Entry, Summary, WalkState, summary};
use baywalk_paper::Sheet;
use baywalk_paper::photo::{NoPhotos, Photos};
use baywalk_paper::report::{Asked, Facts, LedgerHead, follow_up, sheet};
use baywalk_words::Words;
use scraper::{Html, Node};
use uuid::Uuid;

/// The owner of everything that a report borrows.
pub(crate) struct Scene {
    pub(crate) book: Book,
    pub(crate) entries: Vec<Entry>,
    pub(crate) walk: WalkState,
    pub(crate) summary: Summary,
    pub(crate) findings: Vec<Finding>,
    moved_before: Vec<PointId>,
    due: DueShown,
    asked: Vec<Asked>,
}

impl Scene {
    pub(crate) fn new(pen: Pen) -> Self {
        let book = book(pen);
        let entries = entries(pen);
        let walk = WalkState::fold(&entries, &book).unwrap();
        Self {
            summary: summary(&walk, &book),
            findings: findings(pen),
            moved_before: vec![N_IN, POST],
            due: DueShown {
                on: "2028-03-20".parse().unwrap(),
                reason: DueReason::Months,
                at: Stated::parse_pair("46230 mi").ok(),
                second_look: "2027-03-21".parse().ok(),
            },
            asked: vec![Asked {
                when: "20 March 2028".to_owned(),
                rule: pen("the whole rig: 12 months or 5000 mi"),
                first: "the months come first".to_owned(),
                lines: vec![
                    "20 March 2028 by the months".to_owned(),
                    pen("put off: away"),
                ],
            }],
            book,
            entries,
            walk,
        }
    }

    /// The report, without a format.
    pub(crate) fn sheet(&self, language: &str) -> Sheet {
        sheet(&self.facts(), &words(language))
    }

    /// The sheet of a finding.
    pub(crate) fn follow_up(&self, language: &str, kind: FindingKind) -> Sheet {
        let mut findings = self.findings.iter();
        let finding = findings
            .find(|finding| finding.raised.kind == kind)
            .unwrap();
        follow_up(&self.facts(), finding, &words(language))
    }

    /// The report as HTML.
    pub(crate) fn html(&self, language: &str) -> String {
        html(&self.sheet(language))
    }

    fn facts(&self) -> Facts<'_> {
        Facts {
            book: &self.book,
            walk: &self.walk,
            entries: &self.entries,
            summary: &self.summary,
            findings: &self.findings,
            moved_before: &self.moved_before,
            due: Some(&self.due),
            asked: &self.asked,
            ledger: LedgerHead {
                digest: "a0efe6fe5c19a80ca089a6e9d4c3aa9b38cc912abda648bea87070a0b835fc9b",
                sequence: 683,
            },
            edition: "baywalk 0.1.0",
            printed: moment(180).wall,
        }
    }
}

/// The words of a language.
pub(crate) fn words(language: &str) -> Words {
    Words::for_locales(&[language])
}

/// A sheet as HTML, without photos.
pub(crate) fn html(sheet: &Sheet) -> String {
    html_with(sheet, &NoPhotos)
}

/// A sheet as HTML.
pub(crate) fn html_with(sheet: &Sheet, photos: &dyn Photos) -> String {
    let mut page = Vec::new();
    sheet.html(photos, &mut page).unwrap();
    String::from_utf8(page).unwrap()
}

/// Gives the same picture for every digest.
pub(crate) struct OnePhoto(pub(crate) Vec<u8>);

impl OnePhoto {
    /// A grey picture of 64 by 48.
    pub(crate) fn grey() -> Self {
        let mut bytes = Vec::new();
        let encoder = jpeg_encoder::Encoder::new(&mut bytes, 80);
        let pixels: Vec<u8> = (0..64_u32 * 48).map(|at| (at % 251) as u8).collect();
        encoder
            .encode(&pixels, 64, 48, jpeg_encoder::ColorType::Luma)
            .unwrap();
        Self(bytes)
    }
}

impl Photos for OnePhoto {
    fn jpeg(&self, _digest: &str) -> Option<Vec<u8>> {
        Some(self.0.clone())
    }
}

/// One finding of every kind, spread over points, a source, a reading and the rig; one of them
/// closed, one from an earlier walk.
fn findings(pen: Pen) -> Vec<Finding> {
    use baywalk_domain::coded::Coded;
    let finding = |(place, kind): (usize, &FindingKind)| Finding {
        raised: Raised {
            id: FindingId::new(Uuid::from_u128(200 + u128::try_from(place).unwrap())),
            kind: *kind,
            about: match kind {
                FindingKind::BadReading | FindingKind::OddReading => {
                    About::Reading(ReadingStep::SupplyL1N)
                }
                FindingKind::SourceLeftAway | FindingKind::SourceUnknown => About::Source(SHORE),
                FindingKind::LookTrouble => About::Point(LOOK),
                FindingKind::BayLeftOpen => About::Rig,
                _ => About::Point(L1_IN),
            },
        },
        walk: Some(match kind {
            FindingKind::MovedLeft => WalkId::new(Uuid::from_u128(99)),
            _ => WALK,
        }),
        on: "2026-04-02".parse().unwrap(),
        follow_up: match kind {
            FindingKind::OutOfService => decided(pen, Decision::Licensed),
            FindingKind::WasApart => decided(pen, Decision::Mended),
            _ => None,
        },
    };
    FindingKind::ALL.iter().enumerate().map(finding).collect()
}

fn decided(pen: Pen, decision: Decision) -> Option<FollowUp> {
    Some(FollowUp {
        decision,
        by: "2027-04-10".parse().ok(),
        note: pen("asked on the phone"),
    })
}

/// The text of a page as a reader meets it, one text node a line.
pub(crate) fn visible(page: &str) -> String {
    let document = Html::parse_document(page);
    let mut lines = Vec::new();
    for node in document.tree.nodes() {
        let hidden = node.ancestors().any(|above| {
            matches!(above.value(), Node::Element(element) if ["style", "title"].contains(&element.name()))
        });
        if let Node::Text(text) = node.value()
            && !hidden
            && !text.trim().is_empty()
        {
            lines.push(text.trim().to_owned());
        }
    }
    lines.join("\n") + "\n"
}
