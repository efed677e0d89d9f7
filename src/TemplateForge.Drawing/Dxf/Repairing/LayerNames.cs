using System.Collections.Immutable;

namespace TemplateForge.Drawing;

/// <summary>Names of layers that every controller takes.</summary>
internal static class LayerNames
{
    /// <summary>A new name for each layer: ASCII capitals, digits and hyphens, no two alike, as long as the release takes.</summary>
    public static ImmutableDictionary<string, string> Of(IEnumerable<string> layers, DxfRelease release)
    {
        var longest = release == DxfRelease.R12 ? 31 : 200;
        var (names, taken) = (ImmutableDictionary.CreateBuilder<string, string>(StringComparer.OrdinalIgnoreCase), new HashSet<string>(StringComparer.Ordinal));
        // Those that may stay as they are come first, so that no other takes their name.
        foreach (var layer in layers.Distinct(StringComparer.OrdinalIgnoreCase).OrderBy(l => Plain(l) == l ? 0 : 1))
        {
            var plain = Plain(layer);
            var name = plain.Length > longest ? plain[..longest] : plain;
            for (var number = 2; !taken.Add(name); number++) name = $"{(plain.Length > longest - 5 ? plain[..(longest - 5)] : plain)}-{number}";
            names[layer] = name;
        }
        return names.ToImmutable();
    }

    private static string Plain(string layer)
    {
        var name = new string([.. layer.ToUpperInvariant().Select(c => char.IsAsciiLetterUpper(c) || char.IsAsciiDigit(c) ? c : '-')]);
        return name is "" or "0" ? "LAYER-0" : name;
    }
}
