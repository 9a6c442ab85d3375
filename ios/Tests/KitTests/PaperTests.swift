import Bridge
import Foundation
import Testing
@testable import Kit

/// What is put on paper and what is decided, by the screens, over the real core.
@MainActor @Suite struct PaperTests {
    /// A walk of one bay, in which one terminal has more conductors than it may.
    private func walked() throws -> Scene {
        let scene = try Scene()
        _ = try scene.core.start(scene.rig, ["H"], false)
        var ended = false
        let card = try scene.card { ended = true }
        for _ in 0..<2000 where !ended { try card.answerFirst() }
        scene.phone.outgoing = scene.folder
        return scene
    }

    @Test func eachPaperIsWrittenAndHandedOn() throws {
        let scene = try walked()
        let model = try PapersModel(core: scene.core, phone: scene.phone.phone, rig: scene.rig, written: "written")
        for key in model.state.keys {
            model.send(.press(key))
            #expect(model.state.told == ["written"], "\(model.state.refused)")
            let file = try Data(contentsOf: URL(fileURLWithPath: try #require(scene.phone.handedOver.last)))
            let begin = String(decoding: file.prefix(9), as: UTF8.self)
            #expect(begin.hasPrefix("%PDF-1.7") || begin == "<!DOCTYPE", "\(key.code)")
        }
        #expect(model.state.keys.contains { $0.code.hasPrefix("sheet ") })
        scene.phone.outgoing = try #require(scene.phone.handedOver.last) // a file in the place of a folder
        model.send(.press(try #require(model.state.keys.first)))
        #expect(!model.state.refused.isEmpty && model.state.told.isEmpty)
        try scene.away()
    }

    @Test func aFindingIsDecidedAbout() throws {
        let scene = try walked()
        let model = try FindingsModel(core: scene.core, rig: scene.rig) { _ in }
        let open = model.state.screen.keys.count
        model.send(.press(try #require(model.state.screen.keys.first)))
        for answer in ["mended", "", "made new"] { model.send(.answer(answer)) }
        #expect(model.state.refused == "")
        #expect(model.state.screen.keys.count == open - 1)
        try scene.away()
    }
}
