namespace TemplateForge.Geometry;

/// <summary>A place on a side: the segment by its index, and the share of its length.</summary>
internal readonly record struct Place(int Segment, double Share)
{
    public static Place StartOf(Segment[] _) => new(0, 0);
    public static Place EndOf(Segment[] side) => new(side.Length - 1, 1);
}
