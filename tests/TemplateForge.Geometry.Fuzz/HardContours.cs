using System.IO;
using System.Text.Json;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Fuzz;

/// <summary>Contours with known answers, from a file: offsets, and pairs to combine.</summary>
/// <remarks>
/// <c>{ "name", "closed", "vertices": [[x, y, bulge], …], "offsets": [d, …], "expected_area": [mm², …], "pair_with",
/// "expected_boolean_area": { "union", "intersection", "a_minus_b", "xor" } }</c>. There a positive offset moves to the left of the
/// direction of travel, so it shrinks what runs counter-clockwise; areas are sums over loops with their sign. What has no area
/// is empty here, whatever the file counts round it.
/// </remarks>
internal static class HardContours
{
    /// <summary>The file's areas come from engines that merge at 1e-5 mm; over a boundary this is what they promise.</summary>
    private const double Theirs = 1e-5;

    /// <returns>The exit code.</returns>
    public static int Try(string path)
    {
        using var file = JsonDocument.Parse(File.ReadAllText(path));
        var (right, wrong) = (0, 0);
        var byName = file.RootElement.EnumerateArray().ToDictionary(e => NameOf(e), StringComparer.Ordinal);
        foreach (var entry in file.RootElement.EnumerateArray())
        {
            var offsets = entry.GetProperty("offsets").EnumerateArray().Select(d => d.GetDouble()).ToArray();
            if (!entry.GetProperty("closed").GetBoolean())
            {
                var open = new Path(ContourOf(entry).Segments.SkipLast(1));
                foreach (var d in offsets) Say($"{NameOf(entry)}, an open path, by {d}", () => MoveAside(open, d));
                continue;
            }
            var contour = ContourOf(entry);
            for (var i = 0; i < offsets.Length; i++)
            {
                var expected = Expected(contour, entry.GetProperty("expected_area")[i].GetDouble());
                var grown = contour.IsCounterClockwise ? -offsets[i] : offsets[i];
                Say($"{NameOf(entry)} by {offsets[i]}", () => Offset(contour, grown, expected));
            }
            if (!entry.TryGetProperty("expected_boolean_area", out var areas) || areas.ValueKind != JsonValueKind.Object) continue;
            var (a, b) = (Region.Of(contour), Region.Of(ContourOf(byName[entry.GetProperty("pair_with").GetString()!])));
            Say($"{NameOf(entry)}: union", () => Combine(a, b, a.Union(b), areas.GetProperty("union").GetDouble()));
            Say($"{NameOf(entry)}: intersection", () => Combine(a, b, a.Intersect(b), areas.GetProperty("intersection").GetDouble()));
            Say($"{NameOf(entry)}: difference", () => Combine(a, b, a.Subtract(b), areas.GetProperty("a_minus_b").GetDouble()));
            Say($"{NameOf(entry)}: exclusive or", () => Combine(a, b, a.ExclusiveOr(b), areas.GetProperty("xor").GetDouble()));
        }
        Console.WriteLine($"{right} right, {wrong} wrong");
        return wrong == 0 ? 0 : 1;

        void Say(string what, Action law)
        {
            try
            {
                law();
                right++;
                Console.WriteLine($"right      {what}");
            }
#pragma warning disable CA1031 // whatever a law throws is the finding
            catch (Exception trouble)
#pragma warning restore CA1031
            {
                wrong++;
                Console.WriteLine($"WRONG      {what}: {(trouble is InvalidOperationException ? trouble.Message : trouble)}");
            }
        }
    }

    private static void Offset(Contour contour, double distance, double expected)
    {
        var source = Region.Of(contour);
        var offset = source.Offset(distance);
        Law.IsWellMade(offset);
        Law.IsOffset(offset, source, distance);
        Law.AreEqual(expected, offset.Area, Theirs * (1 + offset.Length), "The area");
    }

    /// <summary>The file gives no area for an open path; the distance tells where it is to be found.</summary>
    private static void MoveAside(Path path, double toLeft)
    {
        var (distance, onward) = (Math.Abs(toLeft), toLeft < 0 ? path : path.Reversed());
        var definition = new PathByDefinition(onward);
        var runs = onward.OffsetToRight(distance);
        foreach (var (point, _) in Samples(runs.SelectMany(r => r.Segments)))
        {
            Law.AreEqual(distance, definition.DistanceTo(point), Tolerance.Length, $"The distance of {point}");
            Law.Holds(definition.IsToTheRight(point, Tolerance.Length), $"{point} lies on the wrong side");
        }
        foreach (var (point, along) in Samples(onward.Segments))
        {
            var beside = point - along.Left * distance;
            if (definition.DistanceTo(beside) < distance - Tolerance.Merge / 100) continue;
            var off = runs.SelectMany(r => r.Segments).Select(s => s.DistanceTo(beside)).DefaultIfEmpty(double.PositiveInfinity).Min();
            // Between sides that turn by next to nothing it cannot be told more exactly how far along one gives way to the other.
            Law.Holds(off <= 10 * Tolerance.Length, $"Nothing runs by {beside}, only {off} mm away");
        }
        var slot = path.Slot(2 * distance);
        Law.IsWellMade(slot);
        foreach (var (point, _) in Samples(slot.Contours.SelectMany(c => c.Segments)))
            Law.AreEqual(distance, definition.DistanceTo(point), Tolerance.Length, $"The distance of {point} of the slot");

        static IEnumerable<(Point, Vector)> Samples(IEnumerable<Segment> segments) =>
            segments.SelectMany(s => Enumerable.Range(0, 20).Select(i => (s.At((i + 0.5) / 20), s.DirectionAt((i + 0.5) / 20))));
    }

    private static void Combine(Region a, Region b, Region answer, double expected)
    {
        Law.AreCombined(a, b);
        Law.AreEqual(expected, answer.Area, Theirs * (1 + a.Length + b.Length), "The area");
    }

    /// <summary>A contour whose own area is nothing has no offset, whatever its traversal adds up to.</summary>
    private static double Expected(Contour contour, double area) => Region.Of(contour).IsEmpty ? 0 : Math.Abs(area);

    private static string NameOf(JsonElement entry) => entry.GetProperty("name").GetString()!;

    /// <summary>Repeated vertices count once.</summary>
    private static Contour ContourOf(JsonElement entry)
    {
        var corners = entry.GetProperty("vertices").EnumerateArray()
            .Select(v => (At: new Point(v[0].GetDouble(), v[1].GetDouble()), Bulge: v[2].GetDouble())).ToList();
        for (var i = corners.Count - 1; i >= 0 && corners.Count > 2; i--)
        {
            if (corners[i].At.DistanceTo(corners[(i + 1) % corners.Count].At) < Tolerance.Merge) corners.RemoveAt(i);
        }
        return Shapes.ThroughPoints([.. corners.Select(c => c.At)], [.. corners.Select(c => c.Bulge)]);
    }
}
