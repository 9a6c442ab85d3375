import Bridge
import Design
import Kit
import SwiftUI

public struct PlanPage: View {
    @Environment(\.say) private var say
    let state: PlanState
    let send: @MainActor (PlanEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: PlanState, send: @escaping @MainActor (PlanEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        Sheet(keysFromTop: state.screen == nil) {
            Head(say("shell-plan"), onBack: onBack)
        } keys: {
            if let screen = state.screen { following(screen) } else { minutes }
        } content: {
            Answer(refused: state.refused)
            if let screen = state.screen { Planned(state: state, screen: screen, send: send) }
        }
    }

    @ViewBuilder private var minutes: some View {
        Words(say("shell-plan-minutes"), .heading).frame(maxWidth: .infinity, alignment: .leading)
        NumberPad(typed: state.typed, unit: "min") { send(.type($0)) }
        PressKey(say("shell-plan-make"), weight: .primary, least: 76) { send(.make) }
    }

    @ViewBuilder private func following(_ screen: PlanScreen) -> some View {
        PressKey(say("shell-plan-anew")) { send(.anew) }
        if screen.walking && !screen.followed {
            PressKey(say("shell-plan-follow"), weight: .primary, least: 76) { send(.follow) }
        } else if screen.followed {
            PressKey(say("shell-plan-leave")) { send(.leave) }
        }
    }
}

private struct Planned: View {
    let state: PlanState
    let screen: PlanScreen
    let send: @MainActor (PlanEvent) -> Void

    var body: some View {
        Words(screen.headline, .heading)
        Cautions(screen.over.map { [$0] } ?? [])
        ForEach(screen.stops, id: \.code) { stop in
            Hairline()
            Stop(state: state, stop: stop, send: send)
        }
        Hairline()
        Lines(screen.leftOut, .body)
        Words(screen.proof.word, .note)
        Lines(screen.notes, .note)
    }
}

/// A bay of the plan, and its points in the order of the walk.
private struct Stop: View {
    let state: PlanState
    let stop: PlanStop
    let send: @MainActor (PlanEvent) -> Void

    var body: some View {
        HStack(spacing: 12) {
            Tag(stop.code)
            Words(stop.words, .strong).frame(maxWidth: .infinity, alignment: .leading)
        }
        ForEach(stop.points, id: \.code) { point in
            Ranked(point: point, open: point.code == state.open) { send(.open(point.code)) }
        }
        Words(stop.someLeft ?? "", .note)
    }
}

/// A point with its rank; pressed, the rank opens into what it is made of.
private struct Ranked: View {
    let point: PlanPoint
    let open: Bool
    let press: @MainActor () -> Void

    var body: some View {
        PressRow(press: press) {
            VStack(alignment: .leading, spacing: 2) {
                Words("\(point.code), \(point.name)", .body)
                Words(point.must ?? "", .note)
                if open { Lines([point.words] + point.factors, .note) }
            }
        }
    }
}
