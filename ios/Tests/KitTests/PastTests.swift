import Bridge
import Foundation
import Testing
@testable import Kit

/// What the years tell, and the tables of it, over the real core.
@MainActor @Suite struct PastTests {
    @Test func thePastTellsWhatItDrawsAndLeadsToAPoint() throws {
        let scene = try Scene()
        let (app, home) = (scene.app(), Place.past(scene.rig, nil, back: .rig(scene.rig)))
        app.go(to: home)
        guard case .past(let past) = app.shown else { return lost("\(app.place)") }
        let view = past.state.view
        #expect(view.charts.count == 3 && view.screen.charts.count == 3)
        #expect(view.charts.allSatisfy { $0.width == 328 && $0.height > 0 && !$0.parts.isEmpty })
        #expect(view.screen.charts.allSatisfy { !$0.told.isEmpty } && !view.screen.why.isEmpty && !view.screen.caution.isEmpty)
        past.send(.point("F8"))
        #expect(app.place == .past(scene.rig, "F8", back: home))
        guard case .past(let point) = app.shown else { return lost("\(app.place)") }
        #expect(point.state.view.charts.count == 1 && point.state.view.screen.title.hasPrefix("F8"))
        app.back()
        #expect(app.place == home)
        try scene.away()
    }

    @Test func aPointThatIsNotThereIsTold() throws {
        let scene = try Scene()
        let app = scene.app()
        app.go(to: .past(scene.rig, "Z99", back: .rig(scene.rig)))
        guard case .stuck(let why) = app.shown else { return lost("\(app.place)") }
        #expect(why.contains("Z99"))
        app.back()
        #expect(app.place == .rig(scene.rig))
        try scene.away()
    }

    @Test func thePastOfAPointIsReachedFromItsFacts() throws {
        let scene = try Scene()
        let (app, facts) = (scene.app(), Place.facts(scene.rig, "F8", back: .bay(scene.rig, "F")))
        app.go(to: facts)
        guard case .filling(let filling) = app.shown else { return lost("\(app.place)") }
        #expect(filling.state.facts.isPoint)
        filling.send(.past)
        #expect(app.place == .past(scene.rig, "F8", back: facts))
        app.back()
        #expect(app.place == facts)
        let bay = try scene.core.facts(scene.rig, "F")
        #expect(!bay.isPoint, "a bay has no past of its own")
        try scene.away()
    }

    @Test func tablesAreWrittenOnceAndHandedOn() throws {
        let scene = try Scene()
        scene.phone.outgoing = scene.folder
        let safe = SafeModel(core: scene.core, phone: scene.phone.phone, look: .day, hand: .right) { _ in } onHand: { _ in }
        safe.send(.tables)
        #expect(!safe.state.told.isEmpty, "\(safe.state.refused)")
        let file = URL(fileURLWithPath: try #require(scene.phone.handedOver.last))
        let written = try Data(contentsOf: file)
        #expect(written.prefix(2) == Data("PK".utf8))
        safe.send(.tables)
        #expect(!safe.state.refused.isEmpty && safe.state.told.isEmpty, "what is there is not written over")
        #expect(scene.phone.handedOver.count == 1)
        #expect(try Data(contentsOf: file) == written)
        try scene.away()
    }
}
