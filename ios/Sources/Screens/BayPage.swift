import Bridge
import Design
import Kit
import SwiftUI

public struct BayPage: View {
    let state: BayState
    let send: @MainActor (BayEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: BayState, send: @escaping @MainActor (BayEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        if state.more { BayMore(state: state, send: send) } else { StandingBay(state: state, send: send, onBack: onBack) }
    }
}

private struct StandingBay: View {
    @Environment(\.say) private var say
    let state: BayState
    let send: @MainActor (BayEvent) -> Void
    let onBack: @MainActor () -> Void

    var body: some View {
        let view = state.view
        Sheet(place: "bay \(view.tag)") {
            Head(view.name, tag: view.tag, onBack: onBack, onMore: { send(.more) })
            Painted(view.line)
        } keys: {
            BayKeys(state: state, send: send)
        } content: {
            Answer(told: state.told)
            Answer(refused: state.refused)
            Words(view.place, .body)
            if let photo = view.photo {
                PinnedPhoto(path: photo.path, words: photo.words, pins: view.pins)
                if let newer = photo.newer { PressKey(newer) { send(.newer) } }
            }
            Words(say("shell-label-first"), .note)
            ForEach(Array(view.points.enumerated()), id: \.offset) { point in
                VStack(spacing: 8) {
                    Hairline()
                    PointLine(point: point.element) { send(.facts(point.element.code)) }
                }
                .id(point.offset)
            }
        }
    }
}

private struct BayKeys: View {
    @Environment(\.say) private var say
    let state: BayState
    let send: @MainActor (BayEvent) -> Void

    var body: some View {
        let view = state.view
        if !view.keepOut.isEmpty {
            HStack(spacing: 8) {
                Painted(view.mesh)
                Cautions([view.keepOut])
            }
        }
        KeyRow {
            if view.walking { PressKey(say("shell-photo"), inset: 4) { send(.photo) } }
            if view.photo?.path != nil { PressKey(say("shell-pins"), inset: 4) { send(.pins) } }
        }
        if view.walking { PressKey(say("shell-to-card"), weight: .primary, least: 76) { send(.goOn) } }
    }
}

private struct PointLine: View {
    @Environment(\.dynamicTypeSize) private var size
    let point: PointRow
    let press: @MainActor () -> Void

    var body: some View {
        let grade = point.grade?.word ?? ""
        PressRow(press: press) {
            VStack(alignment: .leading, spacing: 2) {
                Words(point.name, .strong)
                Words(point.place, .note)
                if size.isLarge { Words(grade, .strong) }
            }
            .frame(maxWidth: .infinity, alignment: .leading)
            if !size.isLarge { Words(grade, .note) }
            Painted(point.glyph, times: 0.75)
        }
    }
}

/// What can be added where one stands, and the bay's own facts.
private struct BayMore: View {
    @Environment(\.say) private var say
    let state: BayState
    let send: @MainActor (BayEvent) -> Void

    var body: some View {
        let view = state.view
        Sheet {
            Head(view.name, tag: view.tag, onBack: { send(.leave) })
        } keys: {
            if let last = view.points.last { PressKey(say("shell-again"), note: last.name) { send(.again(last.code)) } }
            PressKey(say("set-up-terminal")) { send(.add(.terminal)) }
            PressKey(say("set-up-look-new")) { send(.add(.look)) }
            PressKey(say("set-up-device-new")) { send(.add(.device)) }
        } content: {
            Answer(told: state.told)
            Answer(refused: state.refused)
            Words(say("shell-set-up-here"), .body)
            PressKey(say("shell-facts")) { send(.facts(view.tag)) }
        }
    }
}
