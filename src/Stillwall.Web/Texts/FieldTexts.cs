namespace Stillwall.Web.Texts;

/// <summary>Texts of fields.</summary>
internal static class FieldTexts
{
    internal const string Was = "was", Default = "default", NotStated = "not stated";
}
