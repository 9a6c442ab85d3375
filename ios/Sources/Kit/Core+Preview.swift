import Bridge
import Foundation

extension Core {
    /// The core over a sample rig in a folder that is thrown away, for previews; where it can't be made, one that says why.
    public static func preview(_ layout: String = "sample-motorhome", language: String = "en") -> Core {
        let folder = FileManager.default.temporaryDirectory.appendingPathComponent(UUID().uuidString).path
        do {
            let book = try Baywalk.open(folder: folder, locales: [language])
            _ = try book.startFrom(layout: layout, name: layout)
            return .live(book)
        } catch {
            return .failing(sentence(of: error))
        }
    }
}
