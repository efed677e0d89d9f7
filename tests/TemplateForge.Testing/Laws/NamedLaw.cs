using System.Runtime.CompilerServices;

namespace TemplateForge.Testing;

/// <summary>A law by its name in <see cref="Laws"/>.</summary>
/// <param name="oneIn">A dear law is tried on one case in so many.</param>
/// <param name="check">Throws where the law does not hold.</param>
/// <param name="name">The name.</param>
public sealed class NamedLaw(int oneIn, Action<Trial> check, [CallerMemberName] string name = "")
{
    public string Name { get; } = name;
    public int OneIn { get; } = oneIn;

    /// <exception cref="InvalidOperationException">The law does not hold.</exception>
    public void Check(Trial trial) => check(trial);
}
