import Live
import Screens
import SwiftUI

/// The app: it opens the logbook and shows the shared screens.
@main
struct BaywalkApp: App {
    @State private var started = Started.now()

    var body: some Scene {
        WindowGroup { Front(started: started) }
    }
}

/// What stands in the window; reminders are filled anew when it is left.
private struct Front: View {
    @Environment(\.scenePhase) private var phase
    let started: Started

    var body: some View {
        Group {
            switch started {
            case .whole(let app, _, _): RootView(app)
            case .stuck(let sentence): StuckPage(sentence: sentence)
            }
        }
        .onChange(of: phase) { _, now in
            if now == .background { started.left() }
        }
    }
}
