//! The `calc` door: every computation of the core as one JSON object in and one out.
//!
//! It is the door for tests against outside references and for tables made elsewhere. A calculation
//! is one file with a shape in, a shape out and [`Calculate`]; its line stands in the list below.

mod fault;
mod shape;

pub(crate) use fault::Fault;
use fault::at;
use schemars::JsonSchema;
use serde::Serialize;
use serde::de::DeserializeOwned;

macro_rules! calculations {
    ($($module:ident),+ $(,)?) => {
        $(mod $module;)+
        const ALL: &[Entry] = &[$(Entry::of::<$module::Calculation>()),+];
    };
}

calculations! {
    bank,
    bolt,
    due,
    forecast,
    heat_rise,
    isolation,
    joint,
    loosening,
    plan,
    sample,
    pooled,
    service,
    tool_setting,
    torque,
    wire,
}

/// One calculation: its name, its shapes, and how it is done.
trait Calculate {
    /// Its name on the command line.
    const NAME: &'static str;
    /// What it gives, in one sentence for developers.
    const ABOUT: &'static str;
    /// The object that goes in; unknown fields are refused.
    type In: DeserializeOwned + JsonSchema;
    /// The object that comes out.
    type Out: Serialize + JsonSchema;

    /// Does it.
    ///
    /// # Errors
    /// [`Fault::Field`] naming the field that can't be taken, [`Fault::Refused`] with the reason.
    fn calculate(given: Self::In) -> Result<Self::Out, Fault>;
}

/// A calculation with its shapes forgotten.
struct Entry {
    name: &'static str,
    about: &'static str,
    run: fn(&str) -> Result<String, Fault>,
    schema: fn() -> Result<String, Fault>,
}

impl Entry {
    const fn of<C: Calculate>() -> Self {
        Self {
            name: C::NAME,
            about: C::ABOUT,
            run: run_one::<C>,
            schema: schema_of::<C>,
        }
    }
}

fn run_one<C: Calculate>(input: &str) -> Result<String, Fault> {
    // A struct could also be read from a list: only an object tells what each value is.
    if !input.trim_start().starts_with('{') {
        return Err(Fault::Json("expected an object in braces".to_owned()));
    }
    let given = serde_json::from_str(input).map_err(|error| Fault::Json(error.to_string()))?;
    written(&C::calculate(given)?)
}

/// Both schemas of a calculation.
#[derive(Serialize)]
struct Schemas {
    about: &'static str,
    input: schemars::Schema,
    output: schemars::Schema,
}

fn schema_of<C: Calculate>() -> Result<String, Fault> {
    written(&Schemas {
        about: C::ABOUT,
        input: schemars::schema_for!(C::In),
        output: schemars::schema_for!(C::Out),
    })
}

fn written(value: &impl Serialize) -> Result<String, Fault> {
    serde_json::to_string_pretty(value).map_err(|error| Fault::Refused(error.to_string()))
}

fn entry(name: &str) -> Result<&'static Entry, Fault> {
    ALL.iter()
        .find(|entry| entry.name == name)
        .ok_or_else(|| Fault::Unknown {
            found: name.to_owned(),
            expected: ALL.iter().map(|entry| entry.name).collect(),
        })
}

/// The names of the calculations, each with one sentence on what it gives.
pub(crate) fn names() -> impl Iterator<Item = (&'static str, &'static str)> {
    ALL.iter().map(|entry| (entry.name, entry.about))
}

/// Does the calculation of a name on one JSON object and gives one JSON object.
///
/// # Errors
/// [`Fault`] where there is no such calculation, or the object can't be taken.
pub(crate) fn run(name: &str, input: &str) -> Result<String, Fault> {
    (entry(name)?.run)(input)
}

/// The JSON Schemas of what goes in and what comes out.
///
/// # Errors
/// [`Fault::Unknown`] where there is no such calculation.
pub(crate) fn schema(name: &str) -> Result<String, Fault> {
    (entry(name)?.schema)()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_calculation_has_a_name_a_sentence_and_both_schemas() {
        for (name, about) in names() {
            assert!(about.ends_with('.'), "{name}");
            let schemas: serde_json::Value = serde_json::from_str(&schema(name).unwrap()).unwrap();
            assert_eq!(schemas["input"]["additionalProperties"], false, "{name}");
            assert_eq!(schemas["input"]["type"], "object", "{name}");
            assert_eq!(schemas["output"]["type"], "object", "{name}");
        }
    }

    #[test]
    fn what_is_no_object_of_the_calculation_is_refused_in_a_sentence() {
        for (name, _) in names() {
            for input in [
                "",
                "[]",
                "[\"pressure_screw\"]",
                "{\"no_such_field\": 1}",
                "NaN",
            ] {
                let fault = run(name, input).unwrap_err();
                assert!(matches!(fault, Fault::Json(_)), "{name} {input}");
                assert!(fault.to_string().ends_with('.'), "{fault}");
            }
        }
        assert!(matches!(run("no-such", "{}"), Err(Fault::Unknown { .. })));
    }
}
