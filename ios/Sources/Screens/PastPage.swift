import Bridge
import Design
import Kit
import SwiftUI

public struct PastPage: View {
    @Environment(\.say) private var say
    let state: PastState
    let send: @MainActor (PastEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: PastState, send: @escaping @MainActor (PastEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        let screen = state.view.screen
        Sheet(place: "past \(screen.title)") {
            Head(say("shell-past"), onBack: onBack)
        } keys: {
            Words(screen.caution, .note).frame(maxWidth: .infinity, alignment: .leading)
        } content: {
            Words(screen.title, .heading)
            ForEach(Array(zip(screen.charts, state.view.charts).enumerated()), id: \.offset) { chart in
                Charted(told: chart.element.0, picture: chart.element.1).id(chart.offset)
            }
            Listed(title: "", lines: screen.walks)
            Listed(title: say("shell-past-why"), lines: screen.why)
            if !screen.moved.isEmpty {
                Hairline()
                Words(say("shell-past-moved"), .heading)
                ForEach(screen.moved, id: \.code) { point in PressKey(point.words) { send(.point(point.code)) } }
            }
        }
    }
}

/// A chart with what it tells: the sentences say what the picture shows.
private struct Charted: View {
    let told: ToldChart
    let picture: Picture

    var body: some View {
        VStack(alignment: .leading, spacing: 8) {
            Hairline()
            Words(told.title, .strong)
            if told.drawn { Painted(picture) }
            Lines(told.told, .body)
        }
    }
}
