namespace TemplateForge.Geometry;

public sealed partial class Region
{
    private Boundary? _boundary;

    /// <summary>Made when it is first asked for. Threads that ask at once may each make one, and these are alike.</summary>
    internal Boundary Boundary => _boundary ??= new(this);
}
