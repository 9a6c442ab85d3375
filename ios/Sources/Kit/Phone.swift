import Bridge

/// What the phone does for the screens: keeping choices, handing files on, taking photos, being felt.
@MainActor
public struct Phone {
    /// A choice that was kept, such as the look.
    public var kept: (_ key: String) -> String?
    /// Keeps a choice.
    public var keep: (_ key: String, _ value: String) -> Void
    /// A path for a new backup.
    public var backupPath: () -> String
    /// A path for new tables.
    public var tablesPath: () -> String
    /// The folder into which files are written that are handed on.
    public var outgoing: () -> String
    /// The country of the phone, by its code of two letters: it decides what paper is usual.
    public var country: () -> String
    /// Hands on a file of the outgoing folder.
    public var share: (_ file: String) -> Void
    /// Hands on the calendar file of a rig.
    public var shareCalendar: (_ ics: String) -> Void
    /// Hands a backup that was written on to where its owner keeps it.
    public var handOver: (_ backup: String) -> Void
    /// Asks for a backup; hands over the path of its file.
    public var pickBackup: (_ picked: @escaping @MainActor (String) -> Void) -> Void
    /// Takes or picks a photo of a place in a rig and has it entered; hands over what was told of it.
    public var photo: (_ rig: String, _ place: String, _ entered: @escaping @MainActor ([String]) -> Void) -> Void
    /// Lets the hand feel what became of a tap.
    public var feel: (Feel) -> Void
    /// What can be allowed on this phone alone.
    public var offers: () -> [Offer]

    public init(
        kept: @escaping (String) -> String?,
        keep: @escaping (String, String) -> Void,
        backupPath: @escaping () -> String,
        tablesPath: @escaping () -> String,
        outgoing: @escaping () -> String,
        country: @escaping () -> String,
        share: @escaping (String) -> Void,
        shareCalendar: @escaping (String) -> Void,
        handOver: @escaping (String) -> Void,
        pickBackup: @escaping (@escaping @MainActor (String) -> Void) -> Void,
        photo: @escaping (String, String, @escaping @MainActor ([String]) -> Void) -> Void,
        feel: @escaping (Feel) -> Void,
        offers: @escaping () -> [Offer]
    ) {
        (self.kept, self.keep, self.backupPath, self.handOver) = (kept, keep, backupPath, handOver)
        self.tablesPath = tablesPath
        (self.outgoing, self.country, self.share, self.shareCalendar) = (outgoing, country, share, shareCalendar)
        (self.pickBackup, self.photo, self.feel, self.offers) = (pickBackup, photo, feel, offers)
    }

    /// A phone that does nothing and remembers nothing, for previews.
    public static var still: Phone {
        Phone(
            kept: { _ in nil }, keep: { _, _ in }, backupPath: { "" }, tablesPath: { "" }, outgoing: { "" }, country: { "" }, share: { _ in },
            shareCalendar: { _ in }, handOver: { _ in }, pickBackup: { _ in }, photo: { _, _, _ in }, feel: { _ in }, offers: { [] }
        )
    }
}

/// Something that can be allowed on a phone: the keys of its word and of what it means, and whether it is allowed.
public struct Offer {
    public let word: String
    public let note: String
    public let allowed: Bool
    public let press: @MainActor () -> Void

    public init(word: String, note: String, allowed: Bool, press: @escaping @MainActor () -> Void) {
        (self.word, self.note, self.allowed, self.press) = (word, note, allowed, press)
    }
}

/// What a hand in a glove feels: told by count and length, since strength is not felt through leather.
public enum Feel: Sendable, Equatable {
    case one, two, three, long, refused

    /// What the key of a card is felt as, once it is kept.
    public static func of(key code: String) -> Feel {
        switch code {
        case "moved": .two
        case "loose": .three
        case "apart": .long
        default: .one
        }
    }
}
