/// The three looks: day, dark, and dim red for the night.
public enum Look: String, CaseIterable, Sendable { case day, dark, night }

/// Which hand holds the phone: keys under the thumb are mirrored for the left one.
public enum Hand: String, CaseIterable, Sendable { case right, left }

/// Under which names choices are kept.
public enum Kept {
    public static let look = "look"
    public static let hand = "hand"
    public static let language = "language"
}

/// The languages that can be chosen: that of the phone, or one by its code.
public let languages = ["", "en", "es"]

/// The margin at both sides of a screen, and the widest that a column grows.
public let margin = 16.0
public let widest = 560.0
