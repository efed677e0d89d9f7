using System.Globalization;
using System.Text;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Pairs of a group code and a value, each on its own line, as a DXF is made of.</summary>
/// <param name="unit">What lengths are written in.</param>
internal sealed class DxfTags(DxfUnit unit)
{
    private readonly StringBuilder text = new();

    public DxfUnit Unit => unit;

    public DxfTags Add(int code, string value)
    {
        text.Append(CultureInfo.InvariantCulture, $"{code,3}").Append("\r\n").Append(value).Append("\r\n");
        return this;
    }

    public DxfTags Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    public DxfTags AddHandle(int code, int handle) => Add(code, handle.ToString("X", CultureInfo.InvariantCulture));

    /// <summary>A length in mm, written in the file's unit.</summary>
    public DxfTags AddLength(int code, double mm) => Add(code, unit == DxfUnit.Millimetre ? Written.Length(mm) : Written.LengthIn(unit.Millimetres, mm));

    /// <summary>A factor, an angle in degrees or part of a direction.</summary>
    public DxfTags AddNumber(int code, double value) => Add(code, Written.Ratio(value));

    /// <summary>A point in the plane; its y has the code ten above its x.</summary>
    public DxfTags AddPoint(int code, Point p) => AddLength(code, p.X).AddLength(code + 10, p.Y);

    /// <summary>A point in space, at height 0.</summary>
    public DxfTags AddPointInSpace(int code, Point p) => AddPoint(code, p).AddLength(code + 20, 0);

    public DxfTags Add(DxfTags more)
    {
        text.Append(more.text);
        return this;
    }

    public override string ToString() => text.ToString();
}
