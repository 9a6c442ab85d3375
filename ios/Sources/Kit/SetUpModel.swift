import Bridge
import Observation

/// Setting a rig up: what can make a conductor live, had or not, and the way to a new bay.
public struct SetUpState {
    public var screen: SourcesScreen
    public var refused = ""
}

public enum SetUpEvent {
    case answer(source: String, presence: String)
    case facts(String)
    case newBay
}

@MainActor @Observable
public final class SetUpModel {
    public private(set) var state: SetUpState
    private let core: Core
    private let rig: String
    private let go: (Place) -> Void

    public init(core: Core, rig: String, go: @escaping (Place) -> Void) throws {
        (self.core, self.rig, self.go) = (core, rig, go)
        state = SetUpState(screen: try core.sources(rig))
    }

    public func send(_ event: SetUpEvent) {
        switch event {
        case .answer(let source, let presence): answer(source, presence)
        case .facts(let code): go(.facts(rig, code, back: .setUp(rig)))
        case .newBay: go(.adding(rig, .bay, bay: "", back: .setUp(rig)))
        }
    }

    private func answer(_ source: String, _ presence: String) {
        do {
            _ = try core.change(rig, source, [Field(name: "presence", value: presence)])
            state = SetUpState(screen: try core.sources(rig))
        } catch {
            state.refused = sentence(of: error)
        }
    }
}
