import Bridge
import Design
import Kit
import SwiftUI

public struct ResultPage: View {
    @Environment(\.say) private var say
    let state: ResultState
    let send: @MainActor (ResultEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: ResultState, send: @escaping @MainActor (ResultEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        let screen = state.view.screen
        let counts = screen.grades.map { "\($0.count) \($0.word)" }.joined(separator: ", ")
        Sheet {
            Head(say("shell-result"), onBack: onBack)
        } keys: {
            PressKey(say("shell-findings")) { send(.findings) }
            PressKey(say("shell-papers"), weight: .primary, least: 76) { send(.papers) }
        } content: {
            Words(screen.ended, .heading)
            if !screen.outOfService.isEmpty {
                Words(say("shell-out-of-service"), .heading)
                Cautions(screen.outOfService)
            }
            Listed(title: say("shell-not-judged"), lines: screen.notJudged)
            Listed(title: say("shell-alive"), lines: screen.alive)
            Painted(state.view.strip, description: counts)
            Words(counts, .strong)
            Listed(title: say("shell-had-moved"), lines: screen.moved)
            Listed(title: say("shell-findings"), lines: screen.findings.map { "\($0.about): \($0.words)" })
            Ahead(screen: screen)
        }
    }
}

struct Listed: View {
    let title: String
    let lines: [String]

    var body: some View {
        if !lines.isEmpty {
            Hairline()
            Words(title, .heading).accessibilityAddTraits(.isHeader)
            Lines(lines, .body)
        }
    }
}

/// The second look, the next walk, and what is to be kept until then.
private struct Ahead: View {
    let screen: ResultScreen

    var body: some View {
        Hairline()
        Words(screen.secondLook ?? "", .body)
        Words(screen.due, .strong)
        Words(screen.backup ?? "", .body)
        Words(screen.calendar ?? "", .body)
    }
}
