using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A sheet that is bent, laid flat: what a piece that is cut from it must know.</summary>
internal abstract record BentSheet(FoldedSheet Sheet)
{
    /// <summary>What is printed beside the blank.</summary>
    public abstract ImmutableArray<string> Notes { get; }

    /// <summary>The bends of a blank in the order in which they are made; none of a bend that the blank does not reach.</summary>
    public abstract ImmutableArray<BendLine> LinesOn(Region blank);

    /// <summary>The bends along arcs.</summary>
    public virtual ImmutableArray<CurvedBend> CurvesOn(Region blank) => [];

    /// <summary>Lines to scribe on a blank: where laps begin.</summary>
    public virtual ImmutableArray<Path> ScribedOn(Region blank) => [];

    /// <summary>What the edges of a blank are.</summary>
    public virtual ImmutableArray<Label> LabelsOn(Region blank) => [];

    /// <summary>The bent piece seen on its edge.</summary>
    public abstract ImmutableArray<EdgeView> EdgeViews { get; }

    /// <summary>What a foreman would say, at its places on a blank.</summary>
    public abstract ImmutableArray<Warning> WarningsOn(Region blank);
}

/// <summary>A section, a flanged sheet or a transition, called by its name.</summary>
internal sealed record BentName(string Name, Place Place);
