import Bridge

/// A key that asks for something, and what has been answered so far.
public struct Asking: Equatable {
    public let key: Key
    public private(set) var answers: [String] = []
    public var typed = ""

    /// The question at hand; none where all are answered.
    public var ask: Ask? { answers.count < key.asks.count ? key.asks[answers.count] : nil }

    /// The same with an answer to the question at hand.
    func answered(_ text: String) -> Asking { Asking(key: key, answers: answers + [text]) }

    /// The same question from the first on.
    func anew() -> Asking { Asking(key: key) }
}

extension Ask {
    /// What is asked.
    public var asked: String {
        switch self {
        case .words(let question), .number(let question, _), .choice(let question, _): question
        }
    }

    /// Whether a question is answered by typing.
    public var isTyped: Bool {
        if case .choice = self { false } else { true }
    }

    public var isNumber: Bool {
        if case .number = self { true } else { false }
    }
}

/// The sign that takes one away.
public let erase = "<"

/// What stands after a key of the number pad; what would be no number is not taken.
public func after(_ typed: String, _ sign: String) -> String {
    if sign == erase { return String(typed.dropLast()) }
    if typed.count >= 9 { return typed }
    if sign.allSatisfy(\.isNumber) { return typed + sign }
    if !typed.allSatisfy(\.isNumber) { return typed }
    return typed.isEmpty ? "0" + sign : typed + sign
}
