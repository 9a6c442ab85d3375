import Bridge
import Foundation
import Testing
@testable import Kit

/// What the years tell, and the tables of it, over the real core.
@MainActor @Suite struct PastTests {
    @Test func aPastIsOpenedAndLedBackFrom() throws {
        let scene = try Scene()
        let app = scene.app()
        app.go(to: .past(scene.rig, nil, back: .rig(scene.rig)))
        guard case .past(let past) = app.shown else { return lost("\(app.place)") }
        #expect(!past.state.view.screen.title.isEmpty && !past.state.view.screen.caution.isEmpty)
        let point = try #require(scene.core.bay(scene.rig, "A", 360).points.first).code
        app.go(to: .facts(scene.rig, point, back: .bay(scene.rig, "A")))
        guard case .filling(let filling) = app.shown else { return lost("\(app.place)") }
        #expect(filling.state.facts.isPoint)
        filling.send(.past)
        #expect(app.place == .past(scene.rig, point, back: .facts(scene.rig, point, back: .bay(scene.rig, "A"))))
        app.back()
        guard case .filling = app.shown else { return lost("\(app.place)") }
        try scene.away()
    }

    @Test func tablesAreWrittenAndHandedOn() throws {
        let scene = try Scene()
        scene.phone.outgoing = scene.folder
        let safe = SafeModel(core: scene.core, phone: scene.phone.phone, look: .day, hand: .right) { _ in } onHand: { _ in }
        safe.send(.tables)
        #expect(!safe.state.told.isEmpty, "\(safe.state.refused)")
        let file = try #require(scene.phone.handedOver.last)
        #expect(try Data(contentsOf: URL(fileURLWithPath: file)).prefix(2) == Data("PK".utf8))
        safe.send(.tables)
        #expect(!safe.state.refused.isEmpty || !safe.state.told.isEmpty)
        try scene.away()
    }
}
