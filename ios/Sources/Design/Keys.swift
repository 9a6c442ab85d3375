import Bridge
import SwiftUI

/// How a key stands among the others.
public enum Weight: Sendable { case primary, plain, chosen }

/// The corner of what can be pressed.
public let keyCorner = 10.0

/// A key: what can be pressed. All of them are 56 points high at least. The word, and the note under it, are what a screen
/// reader says.
public struct PressKey: View {
    let word: String
    let note: String
    let glyph: Picture?
    let weight: Weight
    let least: Double
    let inset: Double
    let press: @MainActor () -> Void

    public init(_ word: String, note: String = "", glyph: Picture? = nil, weight: Weight = .plain, least: Double = 56, inset: Double = 12, press: @escaping @MainActor () -> Void) {
        (self.word, self.note, self.glyph, self.weight) = (word, note, glyph, weight)
        (self.least, self.inset, self.press) = (least, inset, press)
    }

    public var body: some View {
        Button(action: press) { KeyWords(word: word, note: note, glyph: glyph, centred: centred) }
            .buttonStyle(KeyStyle(weight: weight, least: least, inset: inset, centred: centred))
            .accessibilityLabel(note.isEmpty ? word : "\(word), \(note)")
            .accessibilityAddTraits(weight == .chosen ? .isSelected : [])
    }

    private var centred: Bool { glyph == nil && note.isEmpty && weight != .primary }
}

/// What stands on a key. What is one word stays in one line, and shrinks before it would be cut.
private struct KeyWords: View {
    @Environment(\.dynamicTypeSize) private var size
    let word: String
    let note: String
    let glyph: Picture?
    let centred: Bool

    var body: some View {
        HStack(spacing: 8) {
            if let glyph, !size.isLarge { Painted(glyph, times: 0.75) }
            VStack(alignment: centred ? .center : .leading, spacing: 2) {
                Words(word, glyph == nil && note.isEmpty ? .strong : .keyWord, align: centred ? .center : .leading, oneLine: !word.contains(" "))
                Words(note, .note)
            }
        }
    }
}

/// The face of a key. Pressed, its colours change at once; at night the primary key is double-ruled instead of filled.
private struct KeyStyle: ButtonStyle {
    let weight: Weight
    let least: Double
    let inset: Double
    let centred: Bool

    func makeBody(configuration: Configuration) -> some View {
        KeyFace(style: self, pressed: configuration.isPressed, label: configuration.label)
    }
}

private struct KeyFace<Label: View>: View {
    @Environment(\.tokens) private var tokens
    let style: KeyStyle
    let pressed: Bool
    let label: Label

    var body: some View {
        let (face, ink) = colours
        let filled = style.weight == .primary && !tokens.night
        label
            .environment(\.tokens, tokens.on(face, ink))
            .padding(.horizontal, style.inset)
            .padding(.vertical, 8)
            .frame(minWidth: 76, maxWidth: .infinity, minHeight: style.least, alignment: style.centred ? .center : .leading)
            .background(face, in: RoundedRectangle(cornerRadius: keyCorner))
            .overlay { RoundedRectangle(cornerRadius: keyCorner).strokeBorder(filled ? face : tokens.ink, lineWidth: 2) }
            .overlay {
                if tokens.night && style.weight == .primary && !pressed {
                    RoundedRectangle(cornerRadius: 5).strokeBorder(tokens.ink, lineWidth: 2).padding(5)
                }
            }
            .contentShape(RoundedRectangle(cornerRadius: keyCorner))
    }

    private var colours: (Color, Color) {
        if pressed || style.weight == .chosen { return (tokens.caution, tokens.onCaution) }
        return style.weight == .primary && !tokens.night ? (tokens.mark, tokens.onMark) : (tokens.key, tokens.ink)
    }
}

/// A square key that is drawn, with the words that a screen reader says.
public struct DrawnKey: View {
    let words: String
    let marks: [CGRect]
    let line: [CGPoint]
    let press: @MainActor () -> Void

    /// The way back: an arrowhead.
    public static func back(_ words: String, press: @escaping @MainActor () -> Void) -> DrawnKey {
        DrawnKey(words: words, marks: [], line: [CGPoint(x: 32, y: 19), CGPoint(x: 23, y: 28), CGPoint(x: 32, y: 37)], press: press)
    }

    /// The way to what is seldom needed: three squares.
    public static func more(_ words: String, press: @escaping @MainActor () -> Void) -> DrawnKey {
        DrawnKey(words: words, marks: [15.5, 25.5, 35.5].map { CGRect(x: $0, y: 25.5, width: 5, height: 5) }, line: [], press: press)
    }

    public var body: some View {
        Button(action: press) { DrawnMarks(marks: marks, line: line) }
            .buttonStyle(KeyStyle(weight: .plain, least: 56, inset: 0, centred: true))
            .frame(width: 76)
            .accessibilityLabel(words)
    }
}

private struct DrawnMarks: View {
    @Environment(\.tokens) private var tokens
    let marks: [CGRect]
    let line: [CGPoint]

    var body: some View {
        let (marks, line, ink) = (marks, line, tokens.ink)
        Canvas { context, _ in
            for mark in marks { context.fill(outline(mark), with: .color(ink)) }
            var path = Path()
            for (number, point) in line.enumerated() { if number == 0 { path.move(to: point) } else { path.addLine(to: point) } }
            context.stroke(path, with: .color(ink), style: StrokeStyle(lineWidth: 3))
        }
        .frame(width: 56, height: 56)
        .accessibilityHidden(true)
    }
}

private func outline(_ mark: CGRect) -> Path {
    var path = Path()
    path.move(to: CGPoint(x: mark.minX, y: mark.minY))
    for corner in [(mark.maxX, mark.minY), (mark.maxX, mark.maxY), (mark.minX, mark.maxY)] {
        path.addLine(to: CGPoint(x: corner.0, y: corner.1))
    }
    path.closeSubpath()
    return path
}

/// A row of small keys.
public struct KeyRow<Content: View>: View {
    let spacing: Double
    let content: Content

    public init(spacing: Double = 8, @ViewBuilder content: () -> Content) { (self.spacing, self.content) = (spacing, content()) }

    public var body: some View { HStack(spacing: spacing) { content } }
}
