using CsCheck;

namespace TemplateForge.Testing;

/// <summary>Holds a law against generated cases that are the same in every run: case 137 is always case 137.</summary>
public static class Repeatably
{
    /// <exception cref="InvalidOperationException">A case breaks the law; the message says which, by number.</exception>
    public static void Check<T1, T2>(this Gen<(T1, T2)> gen, int cases, Action<T1, T2> law) =>
        gen.Check(cases, drawn => law(drawn.Item1, drawn.Item2));

    /// <exception cref="InvalidOperationException">A case breaks the law; the message says which, by number.</exception>
    public static void Check<T>(this Gen<T> gen, int cases, Action<T> law)
    {
        var failed = int.MaxValue;
        Exception? why = null;
        var guard = new Lock();
        Parallel.For(0, cases, new ParallelOptions { MaxDegreeOfParallelism = 2 }, (number, loop) =>
        {
            try
            {
                law(gen.Case(number));
            }
#pragma warning disable CA1031 // whatever a law throws is the finding
            catch (Exception trouble)
#pragma warning restore CA1031
            {
                lock (guard)
                {
                    if (number < failed) (failed, why) = (number, trouble);
                }
                loop.Break();
            }
        });
        if (why is not null) throw new InvalidOperationException($"Case {failed} of {cases}: {why.Message}", why);
    }

    /// <summary>The case of a number, to look at a failure by itself.</summary>
    public static T Case<T>(this Gen<T> gen, int number) => gen.Generate(new PCG((uint)number, 20), null, out _);
}
