import Bridge
import Observation

/// Something new, asked for one question at a time.
public struct AddingState {
    public var form: SetUpForm?
    public var answers: [String] = []
    public var typed = ""
    public var added: Added?
    public var refused = ""

    /// The question at hand; none where all are answered.
    public var ask: Ask? {
        guard let asks = form?.asks, answers.count < asks.count else { return nil }
        return asks[answers.count]
    }
}

public enum AddingEvent {
    case type(String)
    case answer(String)
    case again
    case photo
}

@MainActor @Observable
public final class AddingModel {
    public private(set) var state: AddingState
    private let core: Core
    private let phone: Phone
    private let rig: String
    private let piece: Piece
    private let bay: String

    public init(core: Core, phone: Phone, rig: String, piece: Piece, bay: String) {
        (self.core, self.phone, self.rig, self.piece, self.bay) = (core, phone, rig, piece, bay)
        do {
            state = AddingState(form: try core.setUpForm(rig, piece, bay))
        } catch {
            state = AddingState(refused: sentence(of: error))
        }
    }

    /// Whether what is added is a point, which can be photographed and made once more.
    public var isPoint: Bool { piece == .terminal || piece == .look }

    public func send(_ event: AddingEvent) {
        switch event {
        case .type(let text): (state.typed, state.refused) = (text, "")
        case .answer(let text): answered(text)
        case .again: again()
        case .photo: if let added = state.added { phone.photo(rig, added.code) { _ in } }
        }
    }

    private func answered(_ text: String) {
        (state.answers, state.typed, state.refused) = (state.answers + [text], "", "")
        guard state.ask == nil else { return }
        do {
            state.added = try core.setUpAdd(rig, piece, bay, state.answers)
        } catch {
            (state.answers, state.refused) = ([], sentence(of: error))
        }
    }

    /// One like the one just added.
    private func again() {
        guard let last = state.added else { return }
        do {
            (state.added, state.refused) = (try core.setUpCopy(rig, last.code), "")
        } catch {
            state.refused = sentence(of: error)
        }
    }
}
