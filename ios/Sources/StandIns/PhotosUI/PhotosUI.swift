// A test double of the part that the app uses, for Linux; names and signatures are Apple's, from memory.
import UIKit

public struct PHPickerFilter: Sendable {
    public static let images = PHPickerFilter()
}

public struct PHPickerConfiguration {
    public var filter: PHPickerFilter?
    public var selectionLimit = 1
    public init() {}
}

public struct PHPickerResult {
    public let itemProvider: NSItemProvider
}

public final class NSItemProvider: NSObject, @unchecked Sendable {
    @discardableResult public func loadFileRepresentation(forTypeIdentifier type: String, completionHandler: @escaping @Sendable (URL?, (any Error)?) -> Void) -> Progress {
        completionHandler(nil, nil)
        return Progress(totalUnitCount: 0)
    }
}

@MainActor public protocol PHPickerViewControllerDelegate: AnyObject {
    func picker(_ picker: PHPickerViewController, didFinishPicking results: [PHPickerResult])
}

@MainActor public final class PHPickerViewController: UIViewController {
    public weak var delegate: (any PHPickerViewControllerDelegate)?
    public init(configuration: PHPickerConfiguration) {}
}
