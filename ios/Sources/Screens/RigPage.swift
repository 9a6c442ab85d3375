import Bridge
import Design
import Kit
import SwiftUI

public struct RigPage: View {
    @Environment(\.say) private var say
    let state: RigState
    let send: @MainActor (RigEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: RigState, send: @escaping @MainActor (RigEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        let screen = state.view.screen
        Sheet(place: "rig \(screen.name)") {
            Head(say("shell-rig"), onBack: onBack)
            Words(screen.line?.words ?? "", .note).frame(maxWidth: .infinity, alignment: .leading).padding(.horizontal, margin)
        } keys: {
            RigKeys(state: state, send: send)
        } content: {
            Plate(name: screen.name, what: screen.what)
            Painted(state.view.strip, description: screen.bays.map { "\($0.code) \($0.name), \($0.stage.word)" }.joined(separator: ", "))
            Words(screen.points, .heading)
            Words(screen.moved, .body)
            Answer(refused: state.refused)
            RigDue(screen: screen, send: send)
            ForEach(Array(screen.bays.enumerated()), id: \.offset) { bay in
                BayRow(bay: bay.element) { send(.bay(bay.element.code)) }.id(bay.offset)
            }
        }
    }
}

/// The name plate of the rig.
private struct Plate: View {
    @Environment(\.tokens) private var tokens
    let name: String
    let what: String

    var body: some View {
        VStack(alignment: .leading, spacing: 2) {
            Words(name, .name).accessibilityAddTraits(.isHeader)
            Words(what, .body)
        }
        .padding(.horizontal, 14)
        .padding(.vertical, 8)
        .frame(maxWidth: .infinity, alignment: .leading)
        .overlay { Rectangle().strokeBorder(tokens.ink, lineWidth: 1) }
        .padding(5)
        .overlay { RoundedRectangle(cornerRadius: 3).strokeBorder(tokens.ink, lineWidth: 2) }
    }
}

/// When the rig is due, and what can be read and set between walks.
private struct RigDue: View {
    @Environment(\.say) private var say
    let screen: RigScreen
    let send: @MainActor (RigEvent) -> Void

    var body: some View {
        Hairline()
        Words(screen.due.words, .strong)
        Words(screen.due.secondLook?.words ?? "", .body)
        Words(screen.due.backup ?? "", .body)
        KeyRow {
            PressKey(say("shell-when"), inset: 4) { send(.whenNext) }
            PressKey(say("shell-past"), inset: 4) { send(.past) }
        }
        KeyRow {
            PressKey(say("shell-plan"), inset: 4) { send(.plan) }
            PressKey(say("shell-set-up"), inset: 4) { send(.setUp) }
        }
        KeyRow {
            PressKey(say("shell-findings"), note: screen.findings, inset: 4) { send(.findings) }
            PressKey(say("shell-papers"), inset: 4) { send(.papers) }
        }
        Hairline()
    }
}

private struct RigKeys: View {
    @Environment(\.say) private var say
    let state: RigState
    let send: @MainActor (RigEvent) -> Void

    var body: some View {
        KeyRow {
            PressKey(say("shell-result"), inset: 4) { send(.result) }
            PressKey(say("shell-torque"), inset: 4) { send(.torque) }
            PressKey(say("shell-safe"), inset: 4) { send(.safe) }
        }
        if !state.view.walking && state.view.screen.due.secondLook != nil {
            PressKey(say("shell-second-look")) { send(.secondLook) }
        }
        if !state.view.walking, let first = state.first {
            PressKey(say("shell-first-walk"), note: first.words) { send(.firstWalk) }
        }
        PressKey(state.view.walking ? say("shell-go-on") : say("shell-begin"), weight: .primary, least: 76) { send(.walk) }
    }
}

/// A bay in the list behind the strip: the same content for those who read or listen.
private struct BayRow: View {
    let bay: StripBay
    let press: @MainActor () -> Void

    var body: some View {
        PressRow(press: press) {
            Tag(bay.code)
            VStack(alignment: .leading, spacing: 2) {
                Words(bay.name, .strong)
                Words("\(bay.side.word), \(bay.stage.word)", .note)
            }
            .frame(maxWidth: .infinity, alignment: .leading)
            Words("\(bay.done)/\(bay.total)", .body)
        }
    }
}
