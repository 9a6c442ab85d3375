import Bridge
import Observation

/// How a walk ended: what stays out of service and what was not judged come first.
public struct ResultState {
    public var view: ResultView
}

public enum ResultEvent {
    case papers
    case findings
}

@MainActor @Observable
public final class ResultModel {
    public private(set) var state: ResultState
    private let rig: String
    private let go: (Place) -> Void

    public init(core: Core, rig: String, width: Double, go: @escaping (Place) -> Void) throws {
        (self.rig, self.go) = (rig, go)
        state = ResultState(view: try core.result(rig, width))
    }

    public func send(_ event: ResultEvent) {
        switch event {
        case .papers: go(.papers(rig, back: .result(rig)))
        case .findings: go(.findings(rig))
        }
    }
}
