import PhotosUI
import UIKit
import UniformTypeIdentifiers

/// Takes a photo, or asks for one where there is no camera; hands over whether its file was written.
@MainActor
final class Camera: NSObject, UIImagePickerControllerDelegate, UINavigationControllerDelegate, PHPickerViewControllerDelegate {
    private var file: URL?
    private var then: (@MainActor (Bool) -> Void)?

    func ask(for file: URL, then: @escaping @MainActor (Bool) -> Void) {
        (self.file, self.then) = (file, then)
        if UIImagePickerController.isSourceTypeAvailable(.camera) {
            let camera = UIImagePickerController()
            camera.sourceType = .camera
            camera.delegate = self
            present(camera)
        } else {
            var wish = PHPickerConfiguration()
            wish.filter = .images
            let picker = PHPickerViewController(configuration: wish)
            picker.delegate = self
            present(picker)
        }
    }

    func imagePickerController(_ picker: UIImagePickerController, didFinishPickingMediaWithInfo info: [UIImagePickerController.InfoKey: Any]) {
        picker.dismiss(animated: true)
        let photo = (info[.originalImage] as? UIImage)?.jpegData(compressionQuality: 0.9)
        guard let photo, let file else { return done(false) }
        done((try? photo.write(to: file, options: .atomic)) != nil)
    }

    func imagePickerControllerDidCancel(_ picker: UIImagePickerController) {
        picker.dismiss(animated: true)
        done(false)
    }

    func picker(_ picker: PHPickerViewController, didFinishPicking results: [PHPickerResult]) {
        picker.dismiss(animated: true)
        guard let picked = results.first, let file else { return done(false) }
        // What the system hands over lives only as long as this call.
        picked.itemProvider.loadFileRepresentation(forTypeIdentifier: UTType.image.identifier) { lent, _ in
            let copied = lent.map { (try? FileManager.default.copyItem(at: $0, to: file)) != nil } ?? false
            Task { @MainActor in self.done(copied) }
        }
    }

    private func done(_ written: Bool) {
        then?(written)
        (file, then) = (nil, nil)
    }
}

/// Asks for a backup; hands over a copy of it.
@MainActor
final class BackupPicker: NSObject, UIDocumentPickerDelegate {
    private var then: (@MainActor (String) -> Void)?

    func ask(then: @escaping @MainActor (String) -> Void) {
        self.then = then
        let picker = UIDocumentPickerViewController(forOpeningContentTypes: [.zip, .data], asCopy: true)
        picker.delegate = self
        present(picker)
    }

    func documentPicker(_ controller: UIDocumentPickerViewController, didPickDocumentsAt urls: [URL]) {
        if let file = urls.first { then?(file.path) }
        then = nil
    }

    func documentPickerWasCancelled(_ controller: UIDocumentPickerViewController) { then = nil }
}
