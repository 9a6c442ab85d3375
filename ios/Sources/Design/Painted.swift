import Bridge
import SwiftUI

/// Paints a drawing of the core as it is: this side adds colours and nothing else. Without a description it is left out
/// for the screen reader, since words beside it say the same.
public struct Painted: View {
    @Environment(\.tokens) private var tokens
    let picture: Picture
    let description: String
    let times: Double

    public init(_ picture: Picture, description: String = "", times: Double = 1) {
        (self.picture, self.description, self.times) = (picture, description, times)
    }

    public var body: some View {
        let (picture, tokens, times) = (picture, tokens, times)
        Canvas { context, _ in
            context.scaleBy(x: times, y: times)
            for part in picture.parts { paint(part, tokens, &context) }
        }
        .frame(width: picture.width * times, height: picture.height * times)
        .accessibilityElement(children: .ignore)
        .accessibilityLabel(description)
        .accessibilityAddTraits(.isImage)
        .accessibilityHidden(description.isEmpty)
    }
}

func paint(_ part: Part, _ on: Tokens, _ context: inout GraphicsContext) {
    let colour = colour(of: part.role, on)
    switch part.shape {
    case .fill(let steps):
        context.fill(path(steps), with: .color(colour))
    case .stroke(let steps, let width, let dash):
        let style = StrokeStyle(lineWidth: width, lineCap: .butt, lineJoin: .miter, dash: dash.map { [$0.on, $0.off] } ?? [])
        context.stroke(path(steps), with: .color(colour), style: style)
    case .words(let label):
        write(label, colour, &context)
    }
}

private func write(_ label: Bridge.Label, _ colour: Color, _ context: inout GraphicsContext) {
    let weight: Font.Weight = label.weight >= 700 ? .bold : label.weight >= 600 ? .semibold : .medium
    let text = Text(verbatim: label.text).font(.system(size: label.size, weight: weight)).monospacedDigit().foregroundStyle(colour)
    let laid = context.resolve(text)
    let baseline = laid.firstBaseline(in: laid.measure(in: CGSize(width: 10_000, height: 10_000)))
    let anchor: UnitPoint = switch label.anchor {
    case .start: .topLeading
    case .middle: .top
    case .end: .topTrailing
    }
    context.draw(laid, at: CGPoint(x: label.x, y: label.y - baseline), anchor: anchor)
}

func colour(of role: Role, _ on: Tokens) -> Color {
    switch role {
    case .ink: on.ink
    case .detail: on.detail
    case .hair: on.hair
    case .plate: on.plate
    case .face: on.key
    case .next: on.mark
    case .onNext: on.onMark
    case .caution: on.caution
    case .onCaution: on.onCaution
    }
}

func path(_ steps: [Segment]) -> Path {
    var path = Path()
    for step in steps {
        switch step {
        case .move(let x, let y): path.move(to: CGPoint(x: x, y: y))
        case .line(let x, let y): path.addLine(to: CGPoint(x: x, y: y))
        case .arc(let x, let y, let radius, let from, let sweep):
            path.addRelativeArc(center: CGPoint(x: x, y: y), radius: radius, startAngle: .degrees(from), delta: .degrees(sweep))
        case .close: path.closeSubpath()
        }
    }
    return path
}
