import UIKit

/// Shows a screen of the system over what stands there.
@MainActor func present(_ shown: UIViewController) {
    let window = UIApplication.shared.connectedScenes.compactMap { $0 as? UIWindowScene }.first?.keyWindow
    guard var top = window?.rootViewController else { return }
    while let over = top.presentedViewController { top = over }
    shown.popoverPresentationController?.sourceView = top.view
    top.present(shown, animated: true)
}

/// Hands a file on to whatever the person chooses.
@MainActor func handOn(_ file: URL) {
    present(UIActivityViewController(activityItems: [file], applicationActivities: nil))
}
