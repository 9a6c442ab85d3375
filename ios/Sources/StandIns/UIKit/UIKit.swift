// A test double of the part of UIKit that the app uses, for Linux; names and signatures are Apple's, from memory.
@_exported import Foundation
import UniformTypeIdentifiers

@MainActor open class UIResponder: NSObject {}

@MainActor open class UIViewController: UIResponder {
    public var presentedViewController: UIViewController?
    public var popoverPresentationController: UIPopoverPresentationController?
    public override init() {}
    open func present(_ shown: UIViewController, animated: Bool, completion: (() -> Void)? = nil) { presentedViewController = shown }
    open func dismiss(animated: Bool, completion: (() -> Void)? = nil) { presentedViewController = nil }
    public var view: UIView! = UIView()
}

@MainActor open class UIView: UIResponder {}
@MainActor public final class UIPopoverPresentationController: NSObject { public var sourceView: UIView? }

@MainActor open class UIScene: UIResponder {}
@MainActor public final class UIWindowScene: UIScene { public var keyWindow: UIWindow? }
@MainActor public final class UIWindow: UIView { public var rootViewController: UIViewController? }

@MainActor public final class UIApplication: UIResponder {
    public static let shared = UIApplication()
    public var connectedScenes: Set<UIScene> = []
}

@MainActor public final class UIActivityViewController: UIViewController {
    public let items: [Any]
    public init(activityItems: [Any], applicationActivities: [UIActivity]?) { items = activityItems }
}

@MainActor open class UIActivity: NSObject {}

public final class UIImage: @unchecked Sendable {
    public let size: CGSize
    public init?(contentsOfFile path: String) {
        guard FileManager.default.fileExists(atPath: path) else { return nil }
        size = CGSize(width: 400, height: 300)
    }
    public func jpegData(compressionQuality: CGFloat) -> Data? { nil }
}

@MainActor public protocol UINavigationControllerDelegate: AnyObject {}

@MainActor public protocol UIImagePickerControllerDelegate: AnyObject {
    func imagePickerController(_ picker: UIImagePickerController, didFinishPickingMediaWithInfo info: [UIImagePickerController.InfoKey: Any])
    func imagePickerControllerDidCancel(_ picker: UIImagePickerController)
}

@MainActor public final class UIImagePickerController: UIViewController {
    public enum SourceType: Int { case photoLibrary, camera, savedPhotosAlbum }
    public struct InfoKey: Hashable, Sendable {
        let name: String
        public static let originalImage = InfoKey(name: "originalImage")
    }
    public static func isSourceTypeAvailable(_ type: SourceType) -> Bool { false }
    public var sourceType = SourceType.photoLibrary
    public weak var delegate: (any UIImagePickerControllerDelegate & UINavigationControllerDelegate)?
}

@MainActor public protocol UIDocumentPickerDelegate: AnyObject {
    func documentPicker(_ controller: UIDocumentPickerViewController, didPickDocumentsAt urls: [URL])
    func documentPickerWasCancelled(_ controller: UIDocumentPickerViewController)
}

@MainActor public final class UIDocumentPickerViewController: UIViewController {
    public weak var delegate: (any UIDocumentPickerDelegate)?
    public init(forOpeningContentTypes types: [UTType], asCopy: Bool) {}
}
