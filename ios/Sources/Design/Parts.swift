import Bridge
import Kit
import SwiftUI

/// The head of a screen: back, the tag of a bay, a title, the way to what is seldom needed.
public struct Head: View {
    @Environment(\.say) private var say
    let title: String
    let tag: String
    let onBack: (@MainActor () -> Void)?
    let onMore: (@MainActor () -> Void)?

    public init(_ title: String, tag: String = "", onBack: (@MainActor () -> Void)?, onMore: (@MainActor () -> Void)? = nil) {
        (self.title, self.tag, self.onBack, self.onMore) = (title, tag, onBack, onMore)
    }

    public var body: some View {
        HStack(spacing: 10) {
            if let onBack { DrawnKey.back(say("shell-back"), press: onBack) }
            if !tag.isEmpty { Tag(tag) }
            Words(title, .heading).accessibilityAddTraits(.isHeader).frame(maxWidth: .infinity, alignment: .leading)
            if let onMore { DrawnKey.more(say("shell-more"), press: onMore) }
        }
        .padding(.horizontal, margin)
        .padding(.vertical, 4)
        .frame(minHeight: 60)
    }
}

/// The label of a bay, as it is printed and stuck in the bay.
public struct Tag: View {
    @Environment(\.tokens) private var tokens
    let code: String

    public init(_ code: String) { self.code = code }

    public var body: some View {
        Words(code, .strong)
            .padding(.horizontal, 8)
            .padding(.vertical, 3)
            .background(tokens.plate)
            .overlay { Rectangle().strokeBorder(tokens.ink, lineWidth: 2) }
    }
}

/// What to do first or what stays alive: reversed and square, directly above the keys it concerns.
public struct Cautions: View {
    @Environment(\.tokens) private var tokens
    let lines: [String]

    public init(_ lines: [String]) { self.lines = lines }

    public var body: some View {
        if !lines.isEmpty {
            VStack(alignment: .leading, spacing: 6) { Lines(lines, .strong) }
                .environment(\.tokens, tokens.on(tokens.caution, tokens.onCaution))
                .padding(.horizontal, 12)
                .padding(.vertical, 10)
                .frame(maxWidth: .infinity, alignment: .leading)
                .background(tokens.caution)
        }
    }
}

/// What was just refused or told, said to a screen reader as it comes.
public struct Answer: View {
    @Environment(\.tokens) private var tokens
    let lines: [String]
    let refused: Bool

    public init(told lines: [String]) { (self.lines, refused) = (lines, false) }
    public init(refused sentence: String) { (lines, refused) = (sentence.isEmpty ? [] : [sentence], true) }
    public init(_ lines: [String], refused: Bool) { (self.lines, self.refused) = (lines, refused) }

    public var body: some View {
        let ground = refused ? tokens.caution : tokens.well
        let ink = refused ? tokens.onCaution : tokens.ink
        Group {
            if !lines.isEmpty {
                VStack(alignment: .leading, spacing: 4) { Lines(lines, .body) }
                    .environment(\.tokens, tokens.on(ground, ink))
                    .padding(.horizontal, 12)
                    .padding(.vertical, 8)
                    .frame(maxWidth: .infinity, alignment: .leading)
                    .background(ground)
                    .overlay { Rectangle().strokeBorder(tokens.ink, lineWidth: 2) }
                    .accessibilityElement(children: .combine)
                    .accessibilityAddTraits(.updatesFrequently)
            }
        }
        .onChange(of: lines, initial: true) { _, now in
            if !now.isEmpty { AccessibilityNotification.Announcement(now.joined(separator: " ")).post() }
        }
    }
}

/// Lines of text of one role, one under another; two may say the same.
public struct Lines: View {
    let lines: [String]
    let role: TypeRole

    public init(_ lines: [String], _ role: TypeRole) { (self.lines, self.role) = (lines, role) }

    public var body: some View {
        ForEach(Array(lines.enumerated()), id: \.offset) { line in Words(line.element, role) }
    }
}

/// The number in the frame of its basis; never a number without its unit and basis. Where there is none, the frame says why.
public struct NumberPlate: View {
    @Environment(\.dynamicTypeSize) private var size
    let figure: Figure
    let frame: Picture

    public init(_ figure: Figure, frame: Picture) { (self.figure, self.frame) = (figure, frame) }

    public var body: some View {
        ZStack(alignment: .leading) {
            Painted(frame)
            if figure.number.isEmpty {
                Words(figure.basis, .title).padding(.horizontal, 30)
            } else {
                VStack(alignment: .leading, spacing: 10) {
                    HStack(spacing: 12) {
                        Words(figure.number, .torque, oneLine: true)
                        VStack(alignment: .leading, spacing: 2) {
                            Words(figure.unit, size.isLarge ? .heading : .title)
                            Words(figure.metric, .body)
                        }
                    }
                    .frame(height: 112)
                    Words(figure.basis, .note)
                }
                .padding(.horizontal, 26)
                .padding(.vertical, 6)
            }
        }
        .frame(minHeight: frame.height)
        .accessibilityElement(children: .combine)
    }
}

/// A dividing hairline.
public struct Hairline: View {
    @Environment(\.tokens) private var tokens

    public init() {}

    public var body: some View { Rectangle().fill(tokens.hair).frame(height: 1).accessibilityHidden(true) }
}

/// A row of the content that can be pressed: 56 points high at least.
public struct PressRow<Content: View>: View {
    let press: @MainActor () -> Void
    let content: Content

    public init(press: @escaping @MainActor () -> Void, @ViewBuilder content: () -> Content) { (self.press, self.content) = (press, content()) }

    public var body: some View {
        Button(action: press) { HStack(spacing: 12) { content }.frame(maxWidth: .infinity, minHeight: 56, alignment: .leading) }
            .buttonStyle(RowStyle())
    }
}

private struct RowStyle: ButtonStyle {
    func makeBody(configuration: Configuration) -> some View { RowFace(pressed: configuration.isPressed, label: configuration.label) }
}

private struct RowFace<Label: View>: View {
    @Environment(\.tokens) private var tokens
    let pressed: Bool
    let label: Label

    var body: some View {
        label
            .environment(\.tokens, pressed ? tokens.on(tokens.caution, tokens.onCaution) : tokens)
            .background(pressed ? tokens.caution : tokens.plate)
            .contentShape(Rectangle())
    }
}
