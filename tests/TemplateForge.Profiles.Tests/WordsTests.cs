using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>Outlines, stations, copies, tables, labels and the work: each by a closed form, each fault with its place.</summary>
public class WordsTests
{
    private const string Head = "profile: example\nversion: 1\ntitle: Example\nabout: An example.\nhand: left\nface_up: outer face\n";
    private const string Foot = "pieces:\n  shown: {title: Shown, blank: shown, thickness: 1 mm}\n";

    private static Region Shape(string lines) => TheLibrary.Read(new("example.yaml", Head + lines.TrimEnd() + "\n" + Foot)).Make().Pieces[0].Shape;

    private static Piece Piece(string lines) => TheLibrary.Read(new("example.yaml", Head + lines.TrimEnd() + "\n")).Make().Pieces[0];

    // Closed forms: a corner of a right angle loses r² (1 − π/4) to a fillet and s²/2 to a chamfer.
    [Theory]
    [InlineData("fillet: 7 mm", 49 * (1 - Math.PI / 4))]
    [InlineData("chamfer: 7 mm", 24.5)]
    [InlineData("fillet: 0", 0)]
    public void A_corner_is_cut_as_it_is_drawn(string corner, double lost)
    {
        var plate = Shape($$"""
            shapes:
              shown:
                outline:
                  - {start: [0, 0], {{corner}}}
                  - {line_to: [40 mm, 0], {{corner}}}
                  - line_to: [40 mm, 30 mm]
                  - {line: 40 mm, towards: 180 deg, {{corner}}}
            """);
        Approximately.Equal(1200 - 3 * lost, plate.Area, within: Tolerance.Area(plate.Length));
    }

    // A stadium: two straights and two half circles that go on without a corner.
    [Theory]
    [InlineData("- {tangent_arc: 180 deg, radius: 10 mm, turning: left}")]
    [InlineData("- {tangent_to: [50 mm, 20 mm]}")]
    public void A_tangent_arc_goes_on_without_a_corner(string arc)
    {
        var slot = Shape($"shapes:\n  shown:\n    outline:\n      - start: [0, 0]\n      - line: 50 mm\n        towards: 0 deg\n      {arc}\n      - line: 50 mm\n      - tangent_to: [0, 0]");
        Assert.Empty(slot.Corners());
        Approximately.Equal(50 * 20 + Math.PI * 100, slot.Area, within: Tolerance.Area(slot.Length));
    }

    [Fact]
    public void A_tangent_arc_may_turn_through_more_than_half_a_circle() =>
        Approximately.Equal(
            0.75 * Math.PI * 400 + 400,
            Shape("shapes:\n  shown:\n    outline:\n      - start: [0, 0]\n      - {line: 20 mm, towards: 0 deg}\n      - {tangent_arc: 270 deg, radius: 20 mm, turning: left}").Area,
            within: 1e-4);

    [Theory]
    [InlineData("row: {shape: one, count: 5, pitch: 12 mm, towards: 30 deg}", 5)]
    [InlineData("ring: {shape: one, centre: [40 mm, 0], count: 7}", 7)]
    [InlineData("ring: {shape: one, centre: [40 mm, 0], count: 3, over: 90 deg, turned: no}", 3)]
    [InlineData("at_stations: {shape: one, stations: along}", 4)]
    [InlineData("at_stations: {shape: one, stations: all_round, turned: no}", 8)]
    public void Copies_are_as_many_as_are_asked_for_and_all_alike(string word, int count)
    {
        var copies = Shape($$"""
            shapes:
              one:
                rectangle: {from: [0, 0], to: [5 mm, 8 mm]}
              rim:
                circle: {centre: [0, 0], diameter: 200 mm}
              shown:
                {{word}}
            stations:
              along: {between: [[0, 0], [90 mm, 0]], pitch: 29 mm}
              all_round: {along: rim, count: 8}
            """);
        Assert.Equal(count, copies.Parts().Length);
        Assert.All(copies.Parts(), p => Approximately.Equal(40, p.Area, within: Tolerance.Area(p.Length)));
    }

    [Fact]
    public void The_last_of_a_ring_over_an_angle_stands_at_the_angle() =>
        Approximately.Equal(50, Shape("shapes:\n  one:\n    circle: {centre: [40 mm, 0], diameter: 20 mm}\n  shown:\n    ring: {shape: one, centre: [0, 0], count: 4, over: 90 deg}").Bounds.Max.Y, within: Tolerance.Length);

    [Fact]
    public void A_shape_and_its_mirror_image_meet_on_the_mirror()
    {
        var both = Shape("shapes:\n  one:\n    rectangle: {from: [0, 0], to: [30 mm, 10 mm]}\n  other:\n    mirrored: {shape: one, across: [[30 mm, 5 mm], [30 mm, 0]]}\n  shown:\n    joined: [one, other]");
        Assert.Equal((0.0, 60.0, 600.0), (both.Bounds.Min.X, both.Bounds.Max.X, Math.Round(both.Area, 6)));
    }

    [Theory]
    [InlineData("left", 20)]
    [InlineData("right", 80)]
    public void The_two_sides_of_a_line_are_the_whole(string keep, double width)
    {
        var side = Shape($"shapes:\n  one:\n    rectangle: {{from: [0, 0], to: [100 mm, 10 mm]}}\n  shown:\n    split: {{shape: one, line: [[20 mm, 0], [20 mm, 3 mm]], keep: {keep}}}");
        Approximately.Equal(width * 10, side.Area, within: Tolerance.Area(side.Length));
    }

    // Evenly means both ends and equal gaps; nearest and most apart differ by one gap.
    [Theory]
    [InlineData("count: 5", 5, 25)]
    [InlineData("count: 1", 1, 0)]
    [InlineData("pitch: 30 mm", 4, 100 / 3.0)]
    [InlineData("most_apart: 30 mm", 5, 25)]
    [InlineData("most_apart: 25 mm", 5, 25)]
    [InlineData("pitch: 30 mm, margin: 10 mm", 4, 80 / 3.0)]
    public void Stations_stand_evenly_from_end_to_end(string spacing, int count, double pitch)
    {
        var made = Piece($$"""
            shapes:
              shown:
                circle: {centre: [0, 0], diameter: 9 mm}
            stations:
              row: {between: [[0, 0], [100 mm, 0]], {{spacing}}}
            pieces:
              shown:
                {title: Shown, blank: shown, thickness: 1 mm, notes: ["{count(row)}"], labels: [{say: "first", at: {station: 1, of: row} }, {say: "last", at: {station: count(row), of: row} }]}
            """);
        Assert.Equal($"{count}", made.Notes[0]);
        Approximately.Equal(pitch * (count - 1), made.Labels[0].At.DistanceTo(made.Labels[1].At), within: Tolerance.Length);
        Approximately.Equal(50, made.Labels[0].At.MidpointTo(made.Labels[1].At).X, within: Tolerance.Length);
    }

    private const string Bolts = """
        parameters:
          size: {label: Size, unit: mm, default: 7, range: 1 to 20, measured: Rule.}
        tables:
          bolts:
            row: size
            between_rows: next_larger
            columns: [hole, edge]
            rows: {10 mm: [11 mm, 16 mm], 6 mm: [6.6 mm, 10 mm], 1/4 in: [7 mm, 11 mm]}
        values:
          hole: {column: hole, of: bolts}
        shapes:
          shown:
            circle: {centre: [0, 0], diameter: hole}
        """;

    [Theory]
    [InlineData("size=6", 6.6)]
    [InlineData("size=1/4 in", 7)]
    [InlineData("size=6.01", 7)]
    [InlineData("size=7", 11)]
    public void A_size_between_two_rows_takes_the_larger(string given, double hole) =>
        Approximately.Equal(hole, TheLibrary.Read(new("example.yaml", Head + Bolts + "\n" + Foot)).Make(given).Pieces[0].Shape.Bounds.Width, within: Tolerance.Length);

    [Theory]
    [InlineData("next_larger", "size=12", "12 mm is more than bolts has")]
    [InlineData("refused", "size=7", "bolts has no row for 7 mm")]
    public void A_size_without_a_row_is_refused_where_the_row_is_chosen(string between, string given, string words)
    {
        var complaint = Assert.Single(TheLibrary.Read(new("example.yaml", Head + Bolts.Replace("next_larger", between, StringComparison.Ordinal) + "\n" + Foot)).Refuse(given));
        Assert.Equal((11, 10), (complaint.Line, complaint.Column));
        Assert.Contains(words, complaint.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Labels_dimensions_and_quantities_come_with_the_piece_and_mirror_with_it()
    {
        var profile = TheLibrary.Read(new("example.yaml", Head + """
            parameters:
              doors: {label: Doors, unit: none, default: 2, range: 1 to 4, measured: Count them.}
            shapes:
              shown:
                rectangle: {from: [0, 0], to: [30 mm, 10 mm]}
            pieces:
              shown:
                title: Shown
                blank: shown
                thickness: 1 mm
                quantity: 2 * doors
                dimensions: [{from: [0, 0], to: [30 mm, 10 mm], measured: across}]
                labels: [{say: "for {doors} doors", at: [30 mm, 10 mm]}, {say: never, at: [0, 0], when: doors > 9}]
              other: {title: Other, paper: shown, thickness: 1 mm, quantity: {by: doors_kind, a: 1, b: 2}}
            """.Replace(", quantity: {by: doors_kind, a: 1, b: 2}", "", StringComparison.Ordinal) + "\n"));
        Assert.True(profile.TryMake([], Hand.Right, Hand.Right, new List<Complaint>(), out var made));
        var piece = made.Piece("shown");
        Assert.Equal((4, 1), (piece.Quantity, made.Piece("other").Quantity));
        Assert.Equal(new Label("for 2 doors", new(-30, 10)), Assert.Single(piece.Labels));
        Assert.Equal(30, Assert.Single(piece.Dimensions).Distance);
    }

    [Fact]
    public void A_step_may_hold_the_work_and_carry_its_caution()
    {
        var made = TheLibrary.Read(new("example.yaml", Head + "shapes:\n  shown:\n    circle: {centre: [0, 0], diameter: 9 mm}\n" + Foot
            + "cautions: [edges]\nsteps:\n  - Cut it.\n  - {hold: \"It is {width(shown)} across.\", caution: [fire, edges]}\n  - {say: Never., when: width(shown) > 10 mm}\n")).Make();
        Assert.Equal([("Cut it.", false, 0), ("It is 9 mm across.", true, 2)], made.Steps.Select(s => (s.Text, s.IsHold, s.Cautions.Length)));
        Assert.Equal([TheLibrary.Shop.Cautions["edges"], TheLibrary.Shop.Cautions["fire"]], made.Cautions);
    }

    public static TheoryData<string, int, int, string> Faults() => new()
    {
        // the shapes section from line 7 on, line, column, words of the complaint
        { "shapes:\n  shown:\n    outline:\n      - start: [0, 0]\n      - line: 5 mm\n      - line_to: [0, 9 mm]", 11, 9, "nothing has been drawn" },
        { "shapes:\n  shown:\n    outline:\n      - start: [0, 0]\n      - line_to: [9 mm, 0]\n      - tangent_to: [-9 mm, 0]", 12, 21, "straight behind" },
        { "shapes:\n  shown:\n    outline:\n      - start: [0, 0]\n      - {line_to: [9 mm, 0], fillet: 30 mm}\n      - line_to: [9 mm, 9 mm]", 11, 38, "does not fit" },
        { "shapes:\n  shown:\n    outline:\n      - start: [0, 0]\n      - {line_to: [9 mm, 0], chamfer: 30 mm}\n      - line_to: [9 mm, 9 mm]", 11, 39, "does not fit" },
        { "shapes:\n  shown:\n    outline:\n      - start: [0, 0]\n      - {line_to: [9 mm, 0], fillet: 1 mm}\n      - line_to: [19 mm, 0]\n      - line_to: [9 mm, 9 mm]", 11, 38, "no corner" },
        { "shapes:\n  shown:\n    outline:\n      - start: [0, 0]\n      - {tangent_arc: 400 deg, radius: 5 mm, turning: up}", 11, 55, "left or right" },
        { "shapes:\n  shown:\n    outline:\n      - start: [0, 0]\n      - goto: [9 mm, 0]", 11, 9, "line_to" },
        { "shapes:\n  a:\n    circle: {centre: [0, 0], diameter: 9 mm}\n  shown:\n    row: {shape: a, count: 2.5, pitch: 9 mm, towards: 0 deg}", 11, 28, "2.5" },
        { "shapes:\n  a:\n    circle: {centre: [0, 0], diameter: 9 mm}\n  shown:\n    row: {shape: a, count: 501, pitch: 9 mm, towards: 0 deg}", 11, 28, "500" },
        { "shapes:\n  a:\n    circle: {centre: [0, 0], diameter: 9 mm}\n  b:\n    circle: {centre: [50 mm, 0], diameter: 9 mm}\n  shown:\n    subtracted: {from: a, take: [b]}", 13, 34, "removes nothing" },
        { "shapes:\n  a:\n    circle: {centre: [0, 0], diameter: 9 mm}\n  shown:\n    split: {shape: a, line: [[9 mm, 0], [9 mm, 9 mm]], keep: right}", 11, 12, "lies to the right" },
        { "shapes:\n  a:\n    circle: {centre: [0, 0], diameter: 9 mm}\n  shown:\n    part: {shape: a, at: [9 mm, 0]}", 11, 26, "No part" },
        { "shapes:\n  shown:\n    circle: {centre: {between: [[0, 0], [9 mm, 0]], at: 10 mm}, diameter: 9 mm}", 9, 57, "not on a line" },
        { "shapes:\n  shown:\n    circle: {centre: {station: 3, of: row}, diameter: 9 mm}\nstations:\n  row: {between: [[0, 0], [9 mm, 0]], count: 2}", 9, 32, "from 1 to 2" },
        { "shapes:\n  shown:\n    circle: {centre: {station: 1, of: row}, diameter: 9 mm}\nstations:\n  row: {between: [[0, 0], [9 mm, 0]], count: 2, pitch: 3 mm}", 11, 8, "count, pitch" },
        { "shapes:\n  shown:\n    circle: {centre: {station: 1, of: row}, diameter: 9 mm}\nstations:\n  row: {between: [[0, 0], [9 mm, 0]], pitch: 0.001 mm}", 11, 46, "500" },
        { "shapes:\n  shown:\n    circle: {centre: {station: 1, of: raw}, diameter: 9 mm}\nstations:\n  row: {between: [[0, 0], [9 mm, 0]], count: 2}", 9, 39, "row" },
        { "paths:\n  p:\n    - {start: [0, 0], fillet: 3 mm}\n    - line_to: [9 mm, 0]\nshapes:\n  shown:\n    circle: {centre: {along: p, at: 1 mm}, diameter: 9 mm}", 9, 31, "sharp" },
        { "tables:\n  t: {row: 3 mm, columns: [a, b], rows: {3 mm: [1 mm]}}\nvalues:\n  v: {column: c, of: t}\nshapes:\n  shown:\n    circle: {centre: [0, 0], diameter: 9 mm}", 8, 48, "2 columns" },
        { "tables:\n  t: {row: 3 mm, columns: [a], rows: {3 mm: [1 mm], 5 deg: [2 mm]}}\nshapes:\n  shown:\n    circle: {centre: [0, 0], diameter: 9 mm}", 8, 53, "an angle" },
        { "tables:\n  t: {row: 3 mm, columns: [a], rows: {3 mm: [1 mm]}}\nvalues:\n  v: {column: c, of: t}\nshapes:\n  shown:\n    circle: {centre: [0, 0], diameter: 9 mm}", 10, 15, "column of t" },
        { "parameters:\n  k: {label: K, choices: {a: A, b: B}, default: a, shop: S.}\nvalues:\n  v: {by: k, a: 3 mm, b: 4 deg}\nshapes:\n  shown:\n    circle: {centre: [0, 0], diameter: 9 mm}", 10, 26, "an angle" },
        { "parameters:\n  k: {label: K, choices: {a: A, b: B}, default: a, shop: S.}\ntables:\n  t: {row: k, columns: [v], rows: {a: [3 mm]}}\nshapes:\n  shown:\n    circle: {centre: [0, 0], diameter: 9 mm}", 10, 35, "no row for b" },
    };

    [Theory, MemberData(nameof(Faults))]
    public void A_fault_is_told_with_its_place(string lines, int line, int column, string words)
    {
        var complaints = new List<Complaint>();
        if (Profile.TryRead(new("example.yaml", Head + lines + "\n" + Foot), TheLibrary.Shop, complaints, out var profile))
            profile.TryMake([], profile.Hand, profile.Hand, complaints, out _);
        Assert.Contains(complaints, c => (c.Line, c.Column) == (line, column) && $"{c}".Contains(words, StringComparison.Ordinal));
    }

    // Bounded: rows of rows would be two hundred and fifty thousand.
    [Fact]
    public void Copies_of_copies_end_somewhere() =>
        Assert.Contains("lines and arcs", TheLibrary.Read(new("example.yaml", Head
            + "shapes:\n  a:\n    circle: {centre: [0, 0], diameter: 1 mm}\n  b:\n    row: {shape: a, count: 500, pitch: 2 mm, towards: 0 deg}\n  shown:\n    row: {shape: b, count: 500, pitch: 2 mm, towards: 90 deg}\n" + Foot)).Refuse()[0].Problem, StringComparison.Ordinal);
}
