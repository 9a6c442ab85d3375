//! The keys of coded values.

/// The key of a member of a coded list: the name of the list and the code, joined by a hyphen, in
/// lower case, every other character a hyphen too.
pub(crate) fn of_code(list: &str, code: &str) -> String {
    format!("{list}-{code}")
        .chars()
        .map(|c| match c {
            'A'..='Z' => c.to_ascii_lowercase(),
            'a'..='z' | '0'..='9' => c,
            _ => '-',
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_has_only_what_a_message_name_may_have() {
        assert_eq!(of_code("service", "50A-120/240V"), "service-50a-120-240v");
        assert_eq!(of_code("torque-unit", "lbf.in"), "torque-unit-lbf-in");
        assert_eq!(of_code("bolt-grade", "iso8.8"), "bolt-grade-iso8-8");
    }
}
