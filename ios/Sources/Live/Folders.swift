import Foundation

/// Where the app's files lie. The logbook can be opened once the phone was unlocked since its start, so that a reminder can
/// be planned behind a locked screen; the phone's own backup never carries it.
struct Folders {
    let book: URL
    let arriving: URL
    let outgoing: URL
    /// The one file that the phone's own backup may carry, where the owner allows it.
    let carried: URL

    static func made() throws -> Folders {
        let files = FileManager.default
        let support = try files.url(for: .applicationSupportDirectory, in: .userDomainMask, appropriateFor: nil, create: true)
        let documents = try files.url(for: .documentDirectory, in: .userDomainMask, appropriateFor: nil, create: true)
        let own = support.appendingPathComponent("baywalk")
        let folders = Folders(
            book: own.appendingPathComponent("store"), arriving: own.appendingPathComponent("arriving"),
            outgoing: own.appendingPathComponent("outgoing"), carried: documents.appendingPathComponent("last.zip")
        )
        for folder in [folders.book, folders.arriving, folders.outgoing] {
            try files.createDirectory(at: folder, withIntermediateDirectories: true)
            try protect(folder)
        }
        try keepFromBackup(own)
        return folders
    }

    private static func protect(_ folder: URL) throws {
        #if !os(Linux)
        let kind = FileProtectionType.completeUntilFirstUserAuthentication
        try FileManager.default.setAttributes([.protectionKey: kind], ofItemAtPath: folder.path)
        #endif
    }

    private static func keepFromBackup(_ folder: URL) throws {
        #if !os(Linux)
        var (folder, values) = (folder, URLResourceValues())
        values.isExcludedFromBackup = true
        try folder.setResourceValues(values)
        #endif
    }

    /// A new name of a file, by the second.
    func stamped(_ stem: String, _ ending: String, now: Date = Date()) -> URL {
        let parts = Calendar(identifier: .gregorian).dateComponents([.year, .month, .day, .hour, .minute, .second], from: now)
        let numbers = [parts.year, parts.month, parts.day, parts.hour, parts.minute, parts.second].map { part in
            let text = "\(part ?? 0)"
            return text.count < 2 ? "0" + text : text
        }
        return outgoing.appendingPathComponent("\(stem)-\(numbers.joined()).\(ending)")
    }
}
