namespace PatternGen;

internal sealed partial class SvgGate
{
    private const string LinkNamespace = "http://www.w3.org/1999/xlink";

    private readonly List<(string Name, string Value)> _attributes = [];

    /// <summary>Copies the start tag of an element, or passes over it if a measure of it can't be read.</summary>
    private bool Start(string kind, bool isShape)
    {
        var isEmpty = _in.IsEmptyElement;
        _hasShapes |= isShape || kind == "use";
        var (name, reference) = (_in.GetAttribute("id"), Reference());
        _uses.Add(_in.Depth + 1, name, kind == "use" ? reference : null);
        if (!TryAttributes(kind, name) && isShape)
        {
            Pass();
            return false;
        }
        _out.WriteStartElement(kind, SvgNamespace);
        foreach (var (attribute, value) in _attributes)
            _out.WriteAttributeString(attribute, value);
        _out.WriteAttributeString(SvgCopy.Line, _where["line ".Length..]);
        if (name is not null)
            _out.WriteAttributeString(SvgCopy.Name, name);
        if (kind == "use" && reference is not null)
            _out.WriteAttributeString(SvgCopy.Reference, reference);
        if (isShape)
            Pass();
        if (isShape || isEmpty)
            _out.WriteEndElement();
        return true;
    }

    /// <summary>What an element refers to within the file.</summary>
    private string? Reference()
    {
        var reference = _in.GetAttribute("href") ?? _in.GetAttribute("href", LinkNamespace);
        return reference?.Trim() is ['#', .. var name] ? name : null;
    }

    /// <summary>Reads the attributes that curves need. Returns whether all of them make sense.</summary>
    private bool TryAttributes(string kind, string? name)
    {
        _attributes.Clear();
        var makesSense = true;
        SvgDeclared said = default;
        string? classes = null;
        string? style = null;
        string? label = null;
        while (_in.MoveToNextAttribute())
        {
            var value = _in.Value;
            if (_in.NamespaceURI.Length > 0)
            {
                // Drawing programs keep the names of layers in namespaces of their own, all under this name.
                if (_in.LocalName == "label")
                    label ??= value;
                continue;
            }
            switch (_in.LocalName)
            {
                case "display":
                    said = said with { Display = value };
                    break;
                case "visibility":
                    said = said with { Visibility = value };
                    break;
                case "class":
                    classes = value;
                    break;
                case "style":
                    style = value;
                    break;
                case SvgCopy.Label:
                    label = value;
                    break;
                case "clip-path" or "mask" when value.Trim() != "none":
                    said = said with { IsClipped = true };
                    break;
                case "transform-origin":
                    _curves.Note(ImportNoteKind.Skipped, "transform-origin", _where);
                    break;
                default:
                    makesSense &= TryAttribute(kind, _in.LocalName, value);
                    break;
            }
        }
        _in.MoveToElement();
        if (label?.Length <= SvgValues.MostText)
            _attributes.Add((SvgCopy.Label, label));
        Apply(_styles.Of(kind, name, classes, style, said));
        return makesSense;
    }

    private void Apply(SvgDeclared said)
    {
        if (said.IsClipped)
            _curves.Note(ImportNoteKind.Changed, "clipped element read whole", _where);
        if (said.Unread is { } property)
            _curves.Note(
                ImportNoteKind.Skipped,
                $"{property} in a style, which is only read as an attribute",
                _where
            );
        if (said.Display == "none")
            _attributes.Add(("display", "none"));
        if (said.Visibility is "hidden" or "collapse" or "visible")
            _attributes.Add(("visibility", said.Visibility));
    }

    private bool TryAttribute(string kind, string name, string value)
    {
        var reading = _values.Read(kind, name, value);
        if (reading.IsTooMuch)
            throw new ImportException(
                $"Up to this {kind}, the file has more than {_limits.Segments} segments.",
                _where,
                ["a drawing with fewer of them", "a higher limit (ImportLimits.WithSegments)"]
            );
        if (reading.Value is not null)
            _attributes.Add((name, reading.Value));
        if (reading.Trouble is null)
            return true;
        if (reading.IsFatal)
            throw new ImportException(
                $"The {name} of the {kind} can't be read: {reading.Trouble}.",
                _where,
                [reading.Remedy]
            );
        _curves.Note(ImportNoteKind.Skipped, reading.Trouble, _where);
        return reading.Value is not null;
    }
}
