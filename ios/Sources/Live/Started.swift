import Bridge
import Foundation
import Kit

/// What stands once the app was started: the screens over a logbook, or why there are none.
@MainActor
public enum Started {
    case whole(AppModel, Core, Notices)
    case stuck(String)

    /// Opens the logbook of this phone, enters what a camera left, and fills the reminders.
    public static func now() -> Started {
        do {
            let folders = try Folders.made()
            let core = Core.live(try Baywalk.open(folder: folders.book.path, locales: locales()))
            _ = try core.photosArrived()
            let app = AppModel(core: core, phone: LivePhone(core: core, folders: folders).phone)
            let notices = Notices { app.open(rig: $0) }
            notices.refill(core)
            return .whole(app, core, notices)
        } catch {
            return .stuck(sentence(of: error))
        }
    }

    /// Days may have moved while the screens were in front.
    public func left() {
        if case .whole(_, let core, let notices) = self { notices.refill(core) }
    }

    /// The language that was chosen, then those of the phone.
    private static func locales() -> [String] {
        let chosen = UserDefaults.standard.string(forKey: Kept.language) ?? ""
        return (chosen.isEmpty ? [] : [chosen]) + Locale.preferredLanguages
    }
}
