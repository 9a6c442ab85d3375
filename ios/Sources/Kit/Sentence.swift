import Bridge

/// The whole sentence of what went wrong.
public func sentence(of error: Error) -> String {
    guard let fault = error as? Fault else { return error.localizedDescription }
    switch fault {
    case .Told(kind: _, let sentence), .Closed(let sentence): return sentence
    }
}
