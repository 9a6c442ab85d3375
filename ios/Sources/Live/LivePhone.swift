import Bridge
import Foundation
import Kit
import UIKit

/// This phone as the screens ask for it. Nothing here is kept in memory alone: the process may die behind a camera.
@MainActor
public final class LivePhone {
    private let core: Core
    private let folders: Folders
    private let choices = UserDefaults.standard
    private let camera = Camera()
    private let picker = BackupPicker()
    private let haptics = Haptics()

    init(core: Core, folders: Folders) { (self.core, self.folders) = (core, folders) }

    /// What is handed to the screens.
    public var phone: Phone {
        Phone(
            kept: { self.choices.string(forKey: $0) },
            keep: { self.choices.set($1, forKey: $0) },
            backupPath: { self.folders.stamped("backup", "zip").path },
            tablesPath: { self.folders.stamped("tables", "zip").path },
            outgoing: { self.folders.outgoing.path },
            country: { Locale.current.region?.identifier ?? "" },
            share: { handOn(URL(fileURLWithPath: $0)) },
            shareCalendar: shareCalendar,
            handOver: handOver,
            pickBackup: { self.picker.ask(then: $0) },
            photo: photo,
            feel: { self.haptics.play($0) },
            offers: { [self.cloud] }
        )
    }

    private func shareCalendar(_ ics: String) {
        let file = folders.stamped("walks", "ics")
        if (try? Data(ics.utf8).write(to: file, options: .atomic)) != nil { handOn(file) }
    }

    /// Where the copy for the phone's own backup can't be written, the backup itself is handed on all the same.
    private func handOver(_ backup: String) {
        if isCarried { try? carry(URL(fileURLWithPath: backup)) }
        handOn(URL(fileURLWithPath: backup))
    }

    /// The core expects a photo before the camera opens, and enters it when one comes back; where the process dies behind
    /// the camera, the next start enters it.
    private func photo(_ rig: String, _ place: String, _ entered: @escaping @MainActor ([String]) -> Void) {
        let file = folders.arriving.appendingPathComponent(UUID().uuidString + ".jpg")
        do {
            _ = try core.photoExpected(rig, place, file.path)
        } catch {
            return entered([sentence(of: error)])
        }
        camera.ask(for: file) { written in
            do {
                if !written { _ = try self.core.photoForgotten(file.path) }
                entered(written ? try self.core.photosArrived().map(\.words) : [])
            } catch {
                entered([sentence(of: error)])
            }
        }
    }

    private var isCarried: Bool { choices.bool(forKey: "carried") }

    private var cloud: Offer {
        Offer(word: "shell-cloud", note: "shell-cloud-note", allowed: isCarried) {
            self.choices.set(!self.isCarried, forKey: "carried")
            if !self.isCarried { try? FileManager.default.removeItem(at: self.folders.carried) }
        }
    }

    /// The new copy stands whole in the place of the old one, or the old one stays.
    private func carry(_ backup: URL) throws {
        try Data(contentsOf: backup, options: .alwaysMapped).write(to: folders.carried, options: .atomic)
    }
}
