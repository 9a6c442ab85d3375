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
    /// Hands a text on as a file whose name ends so.
    public var share: (_ ending: String, _ text: String) -> Void
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
        share: @escaping (String, String) -> Void,
        handOver: @escaping (String) -> Void,
        pickBackup: @escaping (@escaping @MainActor (String) -> Void) -> Void,
        photo: @escaping (String, String, @escaping @MainActor ([String]) -> Void) -> Void,
        feel: @escaping (Feel) -> Void,
        offers: @escaping () -> [Offer]
    ) {
        (self.kept, self.keep, self.backupPath, self.share, self.handOver) = (kept, keep, backupPath, share, handOver)
        (self.pickBackup, self.photo, self.feel, self.offers) = (pickBackup, photo, feel, offers)
    }

    /// A phone that does nothing and remembers nothing, for previews.
    public static var still: Phone {
        Phone(
            kept: { _ in nil }, keep: { _, _ in }, backupPath: { "" }, share: { _, _ in }, handOver: { _ in },
            pickBackup: { _ in }, photo: { _, _, _ in }, feel: { _ in }, offers: { [] }
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
