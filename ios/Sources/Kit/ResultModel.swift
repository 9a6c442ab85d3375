import Bridge
import Observation

/// How a walk ended: what stays out of service and what was not judged come first.
public struct ResultState {
    public var view: ResultView
    public var refused = ""
}

public enum ResultEvent {
    case share
}

@MainActor @Observable
public final class ResultModel {
    public private(set) var state: ResultState
    private let core: Core
    private let phone: Phone
    private let rig: String

    public init(core: Core, phone: Phone, rig: String, width: Double) throws {
        (self.core, self.phone, self.rig) = (core, phone, rig)
        state = ResultState(view: try core.result(rig, width))
    }

    public func send(_ event: ResultEvent) {
        switch event {
        case .share:
            do { phone.share("html", try core.report(rig)) } catch { state.refused = sentence(of: error) }
        }
    }
}
