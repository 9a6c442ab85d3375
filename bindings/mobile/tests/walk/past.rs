//! The past with its pictures, and tables in one file.

use super::*;

#[test]
fn the_past_comes_with_a_picture_for_each_chart_it_tells() {
    let phone = phone();
    let view = phone.core.past(&phone.rig, None, WIDTH).unwrap();
    assert_eq!(view.charts.len(), 3);
    assert_eq!(view.screen.charts.len(), 3);
    assert!(view.charts.iter().all(|chart| chart.height > 0.0));
    assert!(view.screen.charts.iter().all(|told| !told.told.is_empty()));
    assert!(!view.screen.why.is_empty());
    let code = Some("F8".to_owned());
    let point = phone.core.past(&phone.rig, code, WIDTH).unwrap();
    assert_eq!(point.charts.len(), 1);
    let none = phone.core.past(&phone.rig, Some("Z99".to_owned()), WIDTH);
    assert!(matches!(none, Err(Fault::Told { sentence, .. }) if sentence.contains("Z99")));
}

#[test]
fn tables_are_one_file_that_is_not_written_over() {
    let phone = phone();
    let path = phone.folder.path().join("tables.zip");
    let path = path.to_str().unwrap();
    let screen = phone.core.tables(path).unwrap();
    assert_eq!(screen.tables.len(), 7);
    let bytes = std::fs::read(path).unwrap();
    assert!(bytes.starts_with(b"PK"));
    assert!(phone.core.tables(path).is_err());
    assert_eq!(std::fs::read(path).unwrap(), bytes);
    assert!(phone.core.tables("/no/such/folder/tables.zip").is_err());
}
