namespace TemplateForge.Fabrication.Tests;

/// <summary>A rigid motion in space: where the origin goes, and the three directions.</summary>
internal sealed record Motion(Vector3 Origin, Vector3 X, Vector3 Y, Vector3 Z)
{
    public static Motion None { get; } = new(default, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    public Vector3 Of(Vector3 place) => Origin + OfDirection(place);

    public Vector3 OfDirection(Vector3 direction) => X * direction.X + Y * direction.Y + Z * direction.Z;

    /// <summary>What is moved there, seen from where it came from.</summary>
    public Vector3 Back(Vector3 place) => new((place - Origin).Dot(X), (place - Origin).Dot(Y), (place - Origin).Dot(Z));

    /// <summary>This motion of what has first been shifted, then turned about an axis.</summary>
    public Motion After(Vector3 shift, Vector3 onAxis, Vector3 axis, double radians)
    {
        return new(Of(onAxis + (shift - onAxis).Turned(axis, radians)), Turned(None.X), Turned(None.Y), Turned(None.Z));

        Vector3 Turned(Vector3 direction) => OfDirection(direction.Turned(axis, radians));
    }
}
