//! What every stored shape can do, and the macros that declare one.

use super::ShapeFault;

/// A stored form of a value of the domain.
pub trait Shape: Sized {
    /// The domain's own type.
    type Domain;

    /// The stored form of a value.
    fn of(domain: &Self::Domain) -> Self;

    /// The value, checked.
    ///
    /// # Errors
    /// [`ShapeFault`] with the place of the first thing that can't be.
    fn domain(self) -> Result<Self::Domain, ShapeFault>;
}

/// Turns shapes both ways by the standard traits too.
macro_rules! turns {
    ($name:ident = $domain:ty) => {
        impl From<&$domain> for $name {
            fn from(domain: &$domain) -> Self {
                $crate::stored::Shape::of(domain)
            }
        }

        impl TryFrom<$name> for $domain {
            type Error = $crate::stored::ShapeFault;
            fn try_from(shape: $name) -> Result<Self, Self::Error> {
                $crate::stored::Shape::domain(shape)
            }
        }
    };
}
pub(crate) use turns;

/// Declares the stored shape of a record, field by field.
macro_rules! record {
    ($(#[$meta:meta])* $name:ident = $domain:ty {
        $($(#[$attr:meta])* $field:ident: $shape:ty),+ $(,)?
    } $(checked by $check:expr)?) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(deny_unknown_fields)]
        pub struct $name {
            $($(#[$attr])* $field: $shape),+
        }

        impl $crate::stored::Shape for $name {
            type Domain = $domain;

            fn of(domain: &$domain) -> Self {
                Self { $($field: $crate::stored::Shape::of(&domain.$field)),+ }
            }

            fn domain(self) -> Result<$domain, $crate::stored::ShapeFault> {
                type Domain = $domain;
                let value = Domain {
                    $($field: $crate::stored::Shape::domain(self.$field)
                        .map_err(|fault| fault.within(stringify!($field)))?),+
                };
                $(let value = $check(value)?;)?
                Ok(value)
            }
        }

        $crate::stored::shape::turns!($name = $domain);
    };
}
pub(crate) use record;

/// Declares the stored shape of an enum with data: the variant's word, then its data.
macro_rules! choice {
    ($(#[$meta:meta])* $name:ident = $domain:ty {
        $($variant:ident $(($only:ident: $inner:ty))? $({ $($field:ident: $shape:ty),+ $(,)? })?),+ $(,)?
    }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(rename_all = "snake_case", deny_unknown_fields)]
        pub enum $name {
            $(
                #[doc = concat!("As `", stringify!($variant), "` of the domain.")]
                $variant $(($inner))? $({
                    $(
                        #[doc = concat!("As `", stringify!($field), "` of the domain.")]
                        $field: $shape
                    ),+
                })?
            ),+
        }

        impl $crate::stored::Shape for $name {
            type Domain = $domain;

            fn of(domain: &$domain) -> Self {
                type Domain = $domain;
                match domain {
                    $(
                        Domain::$variant $(($only))? $({ $($field),+ })? =>
                            Self::$variant $(($crate::stored::Shape::of($only)))? $({
                                $($field: $crate::stored::Shape::of($field)),+
                            })?
                    ),+
                }
            }

            fn domain(self) -> Result<$domain, $crate::stored::ShapeFault> {
                type Domain = $domain;
                Ok(match self {
                    $(
                        Self::$variant $(($only))? $({ $($field),+ })? =>
                            Domain::$variant $((
                                $crate::stored::Shape::domain($only)
                                    .map_err(|fault| fault.within(stringify!($only)))?
                            ))? $({
                                $($field: $crate::stored::Shape::domain($field)
                                    .map_err(|fault| fault.within(stringify!($field)))?),+
                            })?
                    ),+
                })
            }
        }

        $crate::stored::shape::turns!($name = $domain);
    };
}
pub(crate) use choice;

/// Whether a field says nothing and need not be stored.
pub(crate) fn is_plain<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}
