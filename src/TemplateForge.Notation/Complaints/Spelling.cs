namespace TemplateForge.Notation;

/// <summary>Finds the word that was probably meant.</summary>
public static class Spelling
{
    private const int LongestWord = 64;

    /// <summary>The candidate nearest to a misspelt word, where one is near enough to be worth naming.</summary>
    /// <returns>True where <paramref name="nearest"/> is a likely right spelling; it is empty otherwise.</returns>
    /// <remarks>
    /// Nearness is the number of letters to insert, delete, replace or swap with a neighbour (Damerau 1964, Levenshtein 1966, in
    /// the form that edits no letter twice). One letter in three may be wrong. Capitals, underscores and hyphens do not count,
    /// and a beginning of at least three letters finds its word.
    /// </remarks>
    public static bool Nearest(string word, IEnumerable<string> candidates, out string nearest)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(candidates);
        nearest = "";
        var written = Plain(word);
        if (written.Length is 0 or > LongestWord)
            return false;
        var best = int.MaxValue;
        foreach (var candidate in candidates)
        {
            var right = Plain(candidate);
            if (right.Length is 0 or > LongestWord)
                continue;
            var distance = Distance(written, right);
            var allowed = Math.Max(1, Math.Min(written.Length, right.Length) / 3);
            var isNear = distance <= allowed && distance < Math.Max(written.Length, right.Length);
            var rank = isNear ? distance
                : IsBeginning(written, right) ? LongestWord + distance
                : IsBeginning(right, written) ? (2 * LongestWord) + distance
                : int.MaxValue;
            if (rank < best)
                (best, nearest) = (rank, candidate);
        }
        return best < int.MaxValue;
    }

    private static bool IsBeginning(string start, string whole) =>
        start.Length >= 3 && whole.StartsWith(start, StringComparison.Ordinal);

    private static string Plain(string word) =>
        new(word.Where(c => c is not ('_' or '-' or ' ')).Select(char.ToLowerInvariant).ToArray());

    private static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                d[i, j] = Math.Min(replaced, Math.Min(d[i - 1, j], d[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }
        return d[a.Length, b.Length];
    }
}
