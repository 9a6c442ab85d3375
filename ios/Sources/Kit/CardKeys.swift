import Bridge

/// The keys that stand on every card.
public let always = ["undo", "damage", "photo", "skip", "note", "stop", "close_early", "end_early"]

/// Those of them that stand in the foot row, from the thumb outwards; where text is large, only the one that mends a slip.
public func footOf(large: Bool) -> [String] { large ? ["undo"] : ["undo", "damage", "photo", "skip"] }

/// The grades that a check is recorded with, in the order in which a screen reader says them.
public let grades = ["held", "moved", "loose", "apart"]

extension CardState {
    /// The keys that answer the card.
    public var answers: [Key] { view.card.keys.filter { !always.contains($0.code) } }

    /// Whether the card is answered by grades.
    public var isGraded: Bool { answers.contains { $0.code == "loose" } }

    /// The key that a number is typed for on the card itself.
    public var padKey: Key? {
        guard let first = answers.first, first.asks.count == 1, first.asks.first?.isNumber == true else { return nil }
        return first
    }

    /// The grades in their places: the farther from the thumb, the farther the joint has gone; what is left stands below.
    public func graded(large: Bool, hand: Hand) -> (rows: [[Key?]], below: [Key]) {
        let gone = ["moved", "loose", "apart"]
        let held = answers.filter { !gone.contains($0.code) }
        let at = { (code: String) in self.answers.first { $0.code == code } }
        // Without a torque there is no Moved; where text is large, the one long answer takes a row of its own.
        let wide = large && at("moved") == nil
        let upper = [at("apart"), wide ? at("loose") : at("moved")]
        let lower: [Key?] = wide ? [held.first] : [at("loose"), held.first]
        let rows = [upper, lower].map { hand == .left ? $0.reversed() : $0 }
        return (rows, Array(held.dropFirst()))
    }
}
