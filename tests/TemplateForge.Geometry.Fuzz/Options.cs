using System.Globalization;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Fuzz;

/// <summary>What was asked for on the command line.</summary>
internal sealed record Options
{
    public const string Usage =
        """
        fuzz [--family NAME[,NAME…]] [--law NAME[,NAME…]] [--cases N] [--seed N] [--from N] [--case N] [--minutes M] [--failures N]
        fuzz --hard PATH
            --family   only these families; by default all
            --law      only these laws, on every case; by default all, the dear ones on a share
            --cases    of each family; 10000 by default
            --seed     1 by default; every seed draws other cases
            --from     begins with the case of this number
            --case     only the case of this number, with every law
            --minutes  stops after so long
            --failures stops after so many
            --hard     tries the contours of a file with known answers instead
        Exits with 0 when every law held, 1 when one did not, 2 when it was asked for something that there is not.
        """;

    public IReadOnlyList<Family> Families { get; init; } = Testing.Families.All;
    public IReadOnlyList<NamedLaw> Laws { get; init; } = Testing.Laws.All;

    /// <summary>Whether laws were chosen, and so are tried on every case.</summary>
    public bool EveryLaw { get; init; }

    public int Cases { get; init; } = 10_000;
    public int FirstCase { get; init; }
    public int Seed { get; init; } = 1;
    public TimeSpan Time { get; init; } = TimeSpan.FromDays(1);
    public int Failures { get; init; } = int.MaxValue;
    public string? HardContours { get; init; }

    /// <exception cref="FormatException">There is no such option, family or law, or a number is none.</exception>
    public static Options Read(string[] arguments)
    {
        var options = new Options();
        for (var i = 0; i < arguments.Length; i += 2)
        {
            if (i + 1 == arguments.Length) throw new FormatException($"{arguments[i]} is followed by a value.");
            var value = arguments[i + 1];
            options = arguments[i] switch
            {
                "--family" => options with { Families = Chosen(value, Testing.Families.All, f => f.Name) },
                "--law" => options with { Laws = Chosen(value, Testing.Laws.All, l => l.Name), EveryLaw = true },
                "--cases" => options with { Cases = Number(value) },
                "--seed" => options with { Seed = Number(value) },
                "--from" => options with { FirstCase = Number(value) },
                "--case" => options with { FirstCase = Number(value), Cases = 1, EveryLaw = true },
                "--minutes" => options with { Time = TimeSpan.FromMinutes(double.Parse(value, CultureInfo.InvariantCulture)) },
                "--failures" => options with { Failures = Number(value) },
                "--hard" => options with { HardContours = value },
                _ => throw new FormatException($"There is no option {arguments[i]}."),
            };
        }
        return options;
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static T[] Chosen<T>(string names, IEnumerable<T> all, Func<T, string> nameOf) =>
    [
        .. names.Split(',').Select(name => all.FirstOrDefault(t => string.Equals(nameOf(t), name, StringComparison.OrdinalIgnoreCase))
            ?? throw new FormatException($"{name} is none of {string.Join(", ", all.Select(nameOf))}.")),
    ];
}
