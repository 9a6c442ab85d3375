import Bridge
import Design
import Kit
import SwiftUI

/// The whole app, as it stands in its window.
public struct RootView: View {
    @Environment(\.dynamicTypeSize) private var size
    let app: AppModel

    public init(_ app: AppModel) { self.app = app }

    public var body: some View {
        let app = app
        GeometryReader { room in
            ShownView(app: app)
                .onChange(of: Laid(width: room.size.width, scale: size.scale), initial: true) { _, laid in
                    app.lay(width: laid.width, scale: laid.scale)
                }
        }
        .environment(\.tokens, tokens(of: app.look))
        .environment(\.hand, app.hand)
        .environment(\.say) { app.say($0) }
        .environment(\.scrolled, Scrolled(kept: { app.scrolled($0) }, keep: { app.keepScrolled($0, $1) }))
        .background(tokens(of: app.look).plate)
        .preferredColorScheme(app.look == .day ? .light : .dark)
    }
}

/// The room and size of text that drawings are made for.
private struct Laid: Equatable {
    let width: Double
    let scale: Double
}

/// The screen that is shown.
private struct ShownView: View {
    let app: AppModel

    var body: some View {
        let back: @MainActor () -> Void = { app.back() }
        switch app.shown {
        case .rigs(let model): RigsPage(state: model.state, send: { model.send($0) })
        case .rig(let model): RigPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .card(let model): CardPage(state: model.state, send: { model.send($0) }, onBack: back).task { await ticking(model) }
        case .bay(let model): BayPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .result(let model): ResultPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .safe(let model): SafePage(state: model.state, send: { model.send($0) }, onBack: back)
        case .torque(let model): TorquePage(state: model.state, send: { model.send($0) }, onBack: back)
        case .pins(let model): PinsPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .setUp(let model): SetUpPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .plan(let model): PlanPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .whenNext(let model): WhenPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .past(let model): PastPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .findings(let model): FindingsPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .papers(let model): PapersPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .adding(let model): AddingPage(state: model.state, isPoint: model.isPoint, send: { model.send($0) }, onBack: back)
        case .filling(let model): FillingPage(state: model.state, send: { model.send($0) }, onBack: back)
        case .stuck(let sentence): StuckPage(sentence: sentence, onBack: app.place.back == nil ? nil : back)
        }
    }
}

/// Lets a wait run on while the card is shown.
@MainActor private func ticking(_ model: CardModel) async {
    while !Task.isCancelled {
        try? await Task.sleep(for: .seconds(1))
        model.tick()
    }
}

/// What stands where no screen can be shown: why, and the way back.
public struct StuckPage: View {
    let sentence: String
    let onBack: (@MainActor () -> Void)?

    public init(sentence: String, onBack: (@MainActor () -> Void)? = nil) { (self.sentence, self.onBack) = (sentence, onBack) }

    public var body: some View {
        Sheet(head: { Head("", onBack: onBack) }, keys: {}) { Answer(refused: sentence) }
    }
}
