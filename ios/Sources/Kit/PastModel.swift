import Bridge
import Observation

/// The past of a rig, or of one point of it: charts, each with what it tells, and how the interval was chosen.
public struct PastState {
    public var view: PastView
}

public enum PastEvent {
    case point(String)
}

@MainActor @Observable
public final class PastModel {
    public private(set) var state: PastState
    private let onPoint: (String) -> Void

    public init(core: Core, rig: String, code: String?, width: Double, onPoint: @escaping (String) -> Void) throws {
        self.onPoint = onPoint
        state = PastState(view: try core.past(rig, code, width))
    }

    public func send(_ event: PastEvent) {
        switch event {
        case .point(let code): onPoint(code)
        }
    }
}
