import Bridge
import Foundation
import Testing
@testable import Kit

/// A rig set up by a person, photographed, pinned and brought back, over the real core.
@MainActor @Suite struct SetUpTests {
    private func adding(_ scene: Scene, _ rig: String, _ piece: Piece, _ bay: String, _ answers: [String] = []) throws -> AddingModel {
        let model = AddingModel(core: scene.core, phone: scene.phone.phone, rig: rig, piece: piece, bay: bay)
        for answer in answers { model.send(.answer(answer)) }
        return model
    }

    @Test func aRigIsSetUpFromNothingPointByPoint() throws {
        let scene = try Scene()
        var opened = ""
        let rigs = try RigsModel(core: scene.core) { if case .setUp(let rig) = $0 { opened = rig } }
        rigs.send(.name("  Plover "))
        rigs.send(.from("starter-empty-trailer"))
        #expect(!opened.isEmpty, "\(rigs.state.refused)")
        #expect(try scene.core.rigs().rigs.contains { $0.name == "Plover" })
        let sources = try SetUpModel(core: scene.core, rig: opened) { _ in }
        for source in sources.state.screen.sources { sources.send(.answer(source: source.code, presence: "have_not")) }
        #expect(Set(sources.state.screen.sources.map(\.presence.code)) == ["have_not"])
        sources.send(.answer(source: try #require(sources.state.screen.sources.last).code, presence: "have"))
        #expect(sources.state.screen.sources.last?.presence.code == "have")

        let bay = try #require(adding(scene, opened, .bay, "", ["under the bed", "inside", "725"]).state.added).code
        #expect(try !adding(scene, opened, .terminal, bay).state.refused.isEmpty, "a terminal needs its device")
        let device = try #require(adding(scene, opened, .device, bay, ["busbar", "", "dc", "2"]).state.added).code
        let terminal = try adding(scene, opened, .terminal, bay, [device, "push_in", "", "power"])
        terminal.send(.again)
        #expect(terminal.state.refused == "")
        #expect(try scene.core.bay(opened, bay, 360).points.map(\.code) == ["\(bay)1", "\(bay)2"])
        try fill(scene, opened, "\(bay)2")
        try scene.away()
    }

    private func fill(_ scene: Scene, _ rig: String, _ code: String) throws {
        var gone = 0
        let filling = try FillingModel(core: scene.core, rig: rig, code: code) {} onGone: { gone += 1 }
        filling.send(.open(try #require(filling.state.facts.facts.first { $0.column == "name" })))
        filling.send(.answer(" pump feed "))
        #expect(filling.state.facts.name == "pump feed")
        filling.send(.open(try #require(filling.state.facts.facts.first { $0.column == "wire" })))
        filling.send(.answer("as thick as a thumb"))
        #expect(!filling.state.refused.isEmpty, "a size that is none")
        filling.send(.leave)
        filling.send(.retire)
        #expect(gone == 0, "asked once more")
        filling.send(.retire)
        #expect(gone == 1, "\(filling.state.refused)")
    }

    @Test func aBayIsPhotographedAndPinnedByTaps() throws {
        let scene = try Scene()
        _ = try scene.core.start(scene.rig, [], false)
        let code = try #require(scene.core.rig(scene.rig, 328).screen.bays.first).code
        let file = scene.folder + "/panel.png"
        try pixel.write(to: URL(fileURLWithPath: file))
        scene.phone.photo = { rig, place in (try? scene.core.photoAdd(rig, place, file).sentences) ?? [] }
        let bay = try BayModel(core: scene.core, phone: scene.phone.phone, rig: scene.rig, code: code, width: 360) { _ in }
        bay.send(.photo)
        #expect(bay.state.view.photo?.path != nil, "\(bay.state.refused)")
        let pins = try PinsModel(core: scene.core, rig: scene.rig, bay: code, width: 360)
        let first = try #require(pins.state.point).code
        pins.send(.place(across: 420, down: 310))
        #expect(pins.state.point?.code != first, "a tap goes on to the next point")
        pins.send(.before)
        pins.send(.place(across: 500, down: 500))
        let placed = try #require(pins.state.view.pins.first).pin
        #expect(placed == PinScreen(code: first, across: 500, down: 500))
        pins.send(.before)
        pins.send(.takeOut)
        #expect(pins.state.view.pins.isEmpty)
        try scene.away()
    }

    @Test func aBackupIsBroughtBackByTheScreens() throws {
        let scene = try Scene()
        scene.phone.backup = scene.folder + "-backup.zip"
        let safe = SafeModel(core: scene.core, phone: scene.phone.phone, look: .day, hand: .right) { _ in } onHand: { _ in }
        safe.send(.speaks("es"))
        #expect(scene.phone.kept[Kept.language] == "es")
        safe.send(.take(try #require(safe.state.offers.first)))
        #expect(safe.state.offers.map(\.allowed) == [true])
        safe.send(.passphrase("gravel road"))
        safe.send(.backUp)
        #expect(scene.phone.handedOver == [scene.phone.backup], "\(safe.state.refused)")
        _ = try scene.core.startFrom("sample-trailer", "Later")
        safe.send(.passphrase("another"))
        safe.send(.pick)
        #expect(!safe.state.refused.isEmpty && safe.state.picked == nil, "a wrong passphrase")
        safe.send(.passphrase("gravel road"))
        safe.send(.pick)
        #expect(try scene.core.rigs().rigs.count == 2)
        safe.send(.restore)
        #expect(try scene.core.rigs().rigs.count == 1, "\(safe.state.refused)")
        safe.send(.verify)
        #expect(!safe.state.told.isEmpty)
        try FileManager.default.removeItem(atPath: scene.phone.backup)
        try scene.away()
    }

    @Test func torqueByHandAsksOneThingAfterAnother() throws {
        let scene = try Scene()
        let model = try TorqueModel(core: scene.core)
        while let open = model.state.open { model.send(.choose(column: open.column, code: try #require(open.options.first).code)) }
        model.send(.number("as tight as it goes"))
        model.send(.advise)
        #expect(!model.state.refused.isEmpty && model.state.advice == nil)
        model.send(.number("45 lbf.in"))
        model.send(.advise)
        #expect(model.state.advice?.figure.number.isEmpty == false, "\(model.state.refused)")
        model.send(.anew)
        #expect(model.state.advice == nil && model.state.answers.isEmpty)
        try scene.away()
    }
}
