import Bridge
import Observation

/// The home of a rig, and the progress of its walk.
public struct RigState {
    public var view: RigView
    public var first: FirstWalk?
    public var refused = ""
}

public enum RigEvent {
    case walk
    case secondLook
    case firstWalk
    case setUp
    case plan
    case whenNext
    case past
    case findings
    case papers
    case bay(String)
    case result
    case safe
    case torque
}

@MainActor @Observable
public final class RigModel {
    public private(set) var state: RigState
    private let core: Core
    private let rig: String
    private let go: (Place) -> Void

    public init(core: Core, rig: String, width: Double, go: @escaping (Place) -> Void) throws {
        (self.core, self.rig, self.go) = (core, rig, go)
        state = RigState(view: try core.rig(rig, width), first: try core.firstWalk(rig))
    }

    public func send(_ event: RigEvent) {
        switch event {
        case .walk: walk()
        case .secondLook: walk(secondLook: true)
        case .firstWalk: walk(bays: state.first?.bays ?? [])
        case .setUp: go(.setUp(rig))
        case .plan: go(.plan(rig))
        case .whenNext: go(.whenNext(rig))
        case .past: go(.past(rig, nil, back: .rig(rig)))
        case .findings: go(.findings(rig))
        case .papers: go(.papers(rig, back: .rig(rig)))
        case .bay(let code): go(.bay(rig, code))
        case .result: go(.result(rig))
        case .safe: go(.safe(back: .rig(rig)))
        case .torque: go(.torque(back: .rig(rig)))
        }
    }

    private func walk(bays: [String] = [], secondLook: Bool = false) {
        do {
            if !state.view.walking { _ = try core.start(rig, bays, secondLook) }
            go(.walk(rig))
        } catch {
            state.refused = sentence(of: error)
        }
    }
}
