import SwiftUI

/// The roles of text: height in points at the usual size of text and at twice that, and weight. Large sizes grow less.
public enum TypeRole: CaseIterable, Sendable {
    case torque, reading, name, title, keyWord, heading, strong, body, note

    var heights: (usual: Double, doubled: Double) {
        switch self {
        case .torque: (96, 96)
        case .reading: (72, 80)
        case .name: (38, 46)
        case .title: (26, 37)
        case .keyWord: (23, 35)
        case .heading: (18, 30)
        case .strong, .body: (16, 28)
        case .note: (15, 26)
        }
    }

    var weight: Font.Weight {
        switch self {
        case .torque, .reading, .body, .note: .medium
        case .name, .title, .keyWord, .heading, .strong: .semibold
        }
    }

    /// Its height where text is so many times as large as usual: beyond twice, what is read on goes on growing.
    public func height(at scale: Double) -> Double {
        let most = heights.usual <= 18 ? 2.2 : 1.0
        let grown = min(max(scale - 1, 0), most)
        return heights.usual + (heights.doubled - heights.usual) * grown
    }
}

extension DynamicTypeSize {
    /// How much larger than usual text is: the platform's own body heights (from memory) over that of `large`.
    public var scale: Double {
        let body: Double = switch self {
        case .xSmall: 14
        case .small: 15
        case .medium: 16
        case .large: 17
        case .xLarge: 19
        case .xxLarge: 21
        case .xxxLarge: 23
        case .accessibility1: 28
        case .accessibility2: 33
        case .accessibility3: 40
        case .accessibility4: 47
        case .accessibility5: 53
        @unknown default: 17
        }
        return max(body / 17, 1)
    }

    /// Whether text is so large that drawings beside words give way to the words.
    public var isLarge: Bool { scale >= 1.4 }
}

/// Text of a role; nothing where there is none.
public struct Words: View {
    @Environment(\.tokens) private var tokens
    @Environment(\.dynamicTypeSize) private var size
    let text: String
    let role: TypeRole
    let align: TextAlignment
    /// Whether it stays in one line and shrinks before it would be cut.
    let oneLine: Bool

    public init(_ text: String, _ role: TypeRole, align: TextAlignment = .leading, oneLine: Bool = false) {
        (self.text, self.role, self.align, self.oneLine) = (text, role, align, oneLine)
    }

    public var body: some View {
        if !text.isEmpty {
            Text(verbatim: text)
                .font(.system(size: role.height(at: size.scale), weight: role.weight))
                .monospacedDigit()
                .tracking(role == .torque ? -0.035 * role.height(at: size.scale) : 0)
                .foregroundStyle(tokens.ink)
                .multilineTextAlignment(align)
                .lineLimit(oneLine ? 1 : nil)
                .minimumScaleFactor(oneLine ? 0.4 : 1)
                .fixedSize(horizontal: false, vertical: !oneLine)
        }
    }
}
