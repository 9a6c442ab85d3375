import Bridge
import Foundation
import Testing
@testable import Kit

/// One line of the scenario that every shell replays: something that a person does.
private struct Line: Decodable {
    let act: String
    let code: String?
    let text: String?
    let kind: String?

    enum CodingKeys: String, CodingKey { case act = "do", code, text, kind }
}

/// Replays the scenario through the models of this shell, by the steady clock.
@MainActor private final class Driver {
    let scene: Scene
    let rigs: RigsModel
    var rig = ""
    var card: CardModel?

    init() throws {
        scene = try Scene(empty: true)
        rigs = try RigsModel(core: scene.core) { _ in }
    }

    func take(_ line: Line) throws {
        try scene.clock.pass(seconds: 7)
        let (code, text) = (line.code ?? "", line.text ?? "")
        switch line.act {
        case "name": rigs.send(.name(text))
        case "from":
            rigs.send(.from(code))
            rig = try #require(scene.core.rigs().rigs.last).id
        case "presence": try SetUpModel(core: scene.core, rig: rig) { _ in }.send(.answer(source: code, presence: text))
        case "walk":
            try RigModel(core: scene.core, rig: rig, width: 328) { _ in }.send(.walk)
            try stand()
        case "again":
            try scene.again()
            try stand()
        case "plan":
            let plan = PlanModel(core: scene.core, rig: rig) {}
            for event in [PlanEvent.type(text), .make, .follow] { plan.send(event) }
            try #require(plan.state.refused == "")
            try stand()
        case "note":
            let next = try WhenModel(core: scene.core, phone: scene.phone.phone, rig: rig)
            next.send(.press(try #require(next.state.screen.keys.first { $0.code == code })))
            next.send(.answer(text))
            try #require(next.state.refused == "")
        case "press":
            let card = try #require(card)
            try #require(card.state.view.card.kind == line.kind, "\(line)")
            card.send(.press(try card.key(code)))
        case "type": card?.send(.type(text))
        case "answer": card?.send(.answer(text))
        case "refused": try #require(card?.state.refused.isEmpty == false, "not refused: \(line)")
        default: lost("no such thing to do: \(line.act)")
        }
    }

    private func stand() throws {
        card = try CardModel(core: scene.core, phone: scene.phone.phone, rig: rig, room: Room(width: 360, scale: 1)) {}
    }
}

/// The scenario of `tests/parity`, driven by the models of Swift: its ledger is that of Rust and of Kotlin, byte by byte.
@MainActor @Suite struct ParityTests {
    private let folder = URL(fileURLWithPath: #filePath).deletingLastPathComponent().appendingPathComponent("../../../tests/parity")

    private func read() throws -> [Line] {
        let text = try String(contentsOf: folder.appendingPathComponent("walk.jsonl"), encoding: .utf8)
        return try text.split(separator: "\n").map { try JSONDecoder().decode(Line.self, from: Data($0.utf8)) }
    }

    @Test func theScenarioGivesTheLedgerThatIsKept() throws {
        let driver = try Driver()
        for line in try read() { try driver.take(line) }
        let digest = try String(contentsOf: folder.appendingPathComponent("digest.txt"), encoding: .utf8)
        #expect(try driver.scene.core.verify().digest == digest.trimmingCharacters(in: .whitespacesAndNewlines))
        try driver.scene.away()
    }
}
