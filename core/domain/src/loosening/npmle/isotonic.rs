//! The nearest rising sequence.

/// The rising sequence that is nearest to values by weighted squares (pool adjacent violators).
pub(super) fn rising(values: &[f64], weights: &[f64]) -> Vec<f64> {
    // Each block holds its mean, its weight and its length.
    let mut blocks: Vec<(f64, f64, usize)> = Vec::with_capacity(values.len());
    for (value, weight) in values.iter().zip(weights) {
        let mut block = (*value, *weight, 1);
        while let Some(before) = blocks.pop_if(|before| before.0 >= block.0) {
            let weight = before.1 + block.1;
            let mean = (before.0 * before.1 + block.0 * block.1) / weight;
            block = (mean, weight, before.2 + block.2);
        }
        blocks.push(block);
    }
    let each = blocks
        .iter()
        .flat_map(|(mean, _, length)| std::iter::repeat_n(*mean, *length));
    each.collect()
}

#[cfg(test)]
mod tests {
    use super::rising;

    #[test]
    fn falling_neighbours_share_their_mean() {
        let found = rising(&[1.0, 3.0, 2.0, 4.0, 0.0], &[1.0, 1.0, 1.0, 1.0, 3.0]);
        assert_eq!(found, [1.0, 1.5, 1.5, 1.5, 1.5]);
    }
}
