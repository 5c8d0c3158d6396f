namespace Stillwall.Web.Viewer; internal static class Nothing; 
