import Bridge
import Observation

/// What waits, and what was decided about it.
public struct FindingsState {
    public var screen: FindingsScreen
    public var asking: Asking?
    public var told: [String] = []
    public var refused = ""
}

public enum FindingsEvent {
    case press(Key)
    case type(String)
    case answer(String)
    case leave
    case papers
}

@MainActor @Observable
public final class FindingsModel {
    public private(set) var state: FindingsState
    private let core: Core
    private let rig: String
    private let go: (Place) -> Void

    public init(core: Core, rig: String, go: @escaping (Place) -> Void) throws {
        (self.core, self.rig, self.go) = (core, rig, go)
        state = FindingsState(screen: try core.findings(rig))
    }

    public func send(_ event: FindingsEvent) {
        switch event {
        case .press(let key): (state.asking, state.told, state.refused) = (Asking(key: key), [], "")
        case .type(let text):
            state.asking?.typed = text
            state.refused = ""
        case .answer(let text): answered(text)
        case .leave: (state.asking, state.refused) = (nil, "")
        case .papers: go(.papers(rig, back: .findings(rig)))
        }
    }

    private func answered(_ text: String) {
        guard let asking = state.asking?.answered(text) else { return }
        guard asking.ask == nil else { return (state.asking, state.refused) = (asking, "") }
        do {
            let told = try core.findingsPress(rig, asking.key.code, asking.answers).sentences
            state = FindingsState(screen: try core.findings(rig), told: told)
        } catch {
            (state.asking, state.refused) = (state.asking?.anew(), sentence(of: error))
        }
    }
}
