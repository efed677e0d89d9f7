namespace TemplateForge.Fabrication;

/// <summary>The form of a component in its own coordinates: a and b across its axis, c along it, from its reference point.</summary>
public abstract class ComponentForm
{
    private protected ComponentForm()
    {
    }

    /// <summary>Two opposite corners of a box that holds the form.</summary>
    internal abstract (InSpace Low, InSpace High) Bounds { get; }

    /// <summary>The way from the nearest point of the form to a point; nothing from inside it.</summary>
    /// <param name="point">The point, in the form's own coordinates.</param>
    /// <param name="feature">Which face, edge or corner of the form is nearest, by a number.</param>
    internal abstract InSpace Away(InSpace point, out int feature);
}
