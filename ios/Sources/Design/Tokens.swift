import Kit
import SwiftUI

/// The colours of a look. Every pair that carries text in a walk has a contrast of 7 to 1 at least.
public struct Tokens: Equatable, Sendable {
    public var plate, key, well, ink, detail, hair, mark, onMark, caution, onCaution: Color
    public var night = false

    /// The same on a ground that is reversed, or filled with another colour.
    public func on(_ ground: Color, _ ink: Color) -> Tokens {
        var on = self
        (on.ink, on.detail, on.key, on.plate) = (ink, ink, ground, ground)
        return on
    }
}

private func hex(_ value: UInt32) -> Color {
    let part = { (shift: UInt32) in Double((value >> shift) & 0xFF) / 255 }
    return Color(red: part(16), green: part(8), blue: part(0))
}

private let day = Tokens(
    plate: hex(0xF0F2F1), key: hex(0xFFFFFF), well: hex(0xE2E6E5), ink: hex(0x11151A), detail: hex(0x394148),
    hair: hex(0x7C868C), mark: hex(0x22309E), onMark: hex(0xFFFFFF), caution: hex(0x11151A), onCaution: hex(0xF7F9F8)
)

private let dark = Tokens(
    plate: hex(0x0D0F12), key: hex(0x1D2126), well: hex(0x171A1E), ink: hex(0xEEF0EE), detail: hex(0xB9C0C4),
    hair: hex(0x7A848B), mark: hex(0xAFBBFF), onMark: hex(0x0B0D22), caution: hex(0xEEF0EE), onCaution: hex(0x0D0F12)
)

private let black = hex(0x000000)
private let red = hex(0xFF6B57)

private let night = Tokens(
    plate: black, key: black, well: black, ink: red, detail: red, hair: hex(0xB83222), mark: red, onMark: black,
    caution: red, onCaution: black, night: true
)

public func tokens(of look: Look) -> Tokens {
    switch look {
    case .day: day
    case .dark: dark
    case .night: night
    }
}

private struct TokensKey: EnvironmentKey { static let defaultValue = day }
private struct HandKey: EnvironmentKey { static let defaultValue = Hand.right }
private struct TallKey: EnvironmentKey { static let defaultValue = true }
private struct InnerKey: EnvironmentKey { static let defaultValue = 328.0 }
private struct SayKey: EnvironmentKey { static let defaultValue: @MainActor @Sendable (String) -> String = { $0 } }
private struct ScrolledKey: EnvironmentKey { static let defaultValue: Scrolled? = nil }

extension EnvironmentValues {
    public var tokens: Tokens {
        get { self[TokensKey.self] }
        set { self[TokensKey.self] = newValue }
    }

    public var hand: Hand {
        get { self[HandKey.self] }
        set { self[HandKey.self] = newValue }
    }

    /// Whether there is room for what is said directly above the keys; else it stands among the content.
    public var tall: Bool {
        get { self[TallKey.self] }
        set { self[TallKey.self] = newValue }
    }

    /// The width between the margins.
    public var inner: Double {
        get { self[InnerKey.self] }
        set { self[InnerKey.self] = newValue }
    }

    /// A word of the shell in the person's language, by its key in the catalogue of the core.
    public var say: @MainActor @Sendable (String) -> String {
        get { self[SayKey.self] }
        set { self[SayKey.self] = newValue }
    }

    /// Where it is kept how far screens were scrolled.
    public var scrolled: Scrolled? {
        get { self[ScrolledKey.self] }
        set { self[ScrolledKey.self] = newValue }
    }
}

/// Where it is kept at which row a screen was left, so that a person who comes back finds the same place.
public struct Scrolled: Sendable {
    public let kept: @MainActor @Sendable (String) -> Int?
    public let keep: @MainActor @Sendable (String, Int?) -> Void

    public init(kept: @escaping @MainActor @Sendable (String) -> Int?, keep: @escaping @MainActor @Sendable (String, Int?) -> Void) {
        (self.kept, self.keep) = (kept, keep)
    }
}
