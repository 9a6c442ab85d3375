import Bridge
import Observation

/// The same advice as in a walk, for a terminal that stands in no rig.
public struct TorqueState {
    public var questions: [TorqueQuestion]
    public var answers: [String: String] = [:]
    public var number = ""
    public var advice: TorqueScreen?
    public var refused = ""

    /// The question at hand; none where all are answered.
    public var open: TorqueQuestion? { questions.first { answers[$0.column] == nil } }
}

public enum TorqueEvent {
    case choose(column: String, code: String)
    case number(String)
    case advise
    case anew
}

@MainActor @Observable
public final class TorqueModel {
    public private(set) var state: TorqueState
    private let core: Core

    public init(core: Core) throws {
        self.core = core
        state = TorqueState(questions: try core.torqueForm())
    }

    public func send(_ event: TorqueEvent) {
        switch event {
        case .choose(let column, let code):
            state.answers[column] = code
            state.refused = ""
        case .number(let text): (state.number, state.refused) = (text, "")
        case .advise: advise()
        case .anew: state = TorqueState(questions: state.questions)
        }
    }

    private func advise() {
        let number = trimmed(state.number)
        let label = number.isEmpty ? [] : [Field(name: "torque", value: number), Field(name: "torque_basis", value: "label")]
        let chosen = state.questions.compactMap { asked in
            state.answers[asked.column].map { Field(name: asked.column, value: $0) }
        }
        do {
            (state.advice, state.refused) = (try core.torque(chosen + label), "")
        } catch {
            state.refused = sentence(of: error)
        }
    }
}
