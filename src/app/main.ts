import "./ui/tokens.css";
import "./pages/app.ts";
