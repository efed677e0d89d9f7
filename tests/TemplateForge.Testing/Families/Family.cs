using CsCheck;

namespace TemplateForge.Testing;

/// <summary>Trials of one kind. A trial is known by a seed and a number, and is the same on every machine.</summary>
public sealed record Family(string Name, Func<Random, Trial> Draw)
{
    /// <summary>For property tests.</summary>
    public Gen<Trial> Trials => Gen.Int.Select(drawn => Draw(new Random(drawn)));

    public Trial Case(int seed, int number) => Draw(new Random(unchecked((int)(seed * 0x9E3779B1u + number * 0x85EBCA6Bu))));
}
